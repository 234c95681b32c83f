/**
 * What a cut asks for and leaves behind: chip, force, power and torque of milling, drilling, tapping and reaming, speeds
 * and feeds, tool life, surface, and the limit that binds first. Kernels take and give millimetres, newtons, N·mm,
 * N/mm², watts, radians and seconds.
 */
@NullMarked
package setwright.cutting;

import org.jspecify.annotations.NullMarked;
