/**
 * Coefficients of motors, propellers and controllers from rows of a thrust stand, and how well they predict
 * other rows.
 */
@NullMarked
package pappus.calibration;

import org.jspecify.annotations.NullMarked;
