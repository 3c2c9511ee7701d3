/**
 * What thrust-stand rows say of motors, propellers and controllers.
 */
@NullMarked
package pappus.answers.calibration;

import org.jspecify.annotations.NullMarked;
