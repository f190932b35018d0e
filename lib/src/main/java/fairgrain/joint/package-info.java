/** Joints of frames and cases: what they carry in tests, and what they may carry for good. */
@NullMarked
package fairgrain.joint;

import org.jspecify.annotations.NullMarked;
