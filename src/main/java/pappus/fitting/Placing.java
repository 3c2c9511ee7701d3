package pappus.fitting;

import java.util.Optional;

/**
 * Where the pack sits.
 *
 * @param packXMillimetres middle of the pack, mm forward of the motor centre
 * @param centreOfMassXMillimetres centre of mass of the whole with it there, mm
 * @param overhangMillimetres how far the pack reaches beyond the bay at either end, mm
 * @param discClearanceMillimetres in plan between the pack and the nearest propeller disc, mm;
 *     empty without propellers
 */
public record Placing(
    double packXMillimetres,
    double centreOfMassXMillimetres,
    double overhangMillimetres,
    Optional<Double> discClearanceMillimetres) {}
