/** Whether a catalogue and scenarios are sound: what is wrong in their files, and what is doubtful. */
@NullMarked
package pappus.inspection;

import org.jspecify.annotations.NullMarked;
