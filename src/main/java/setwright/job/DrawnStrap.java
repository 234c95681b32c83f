package setwright.job;

import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Torque;
import setwright.quantity.Typed;

/** A drawn-up strap, edge clamp or bolt; see {@link Strapping} for what each value is. */
public record DrawnStrap(
        String id,
        Drawn<Strapping.By> by,
        Drawn<String> strap,
        Drawn<String> stud,
        Drawn<String> washer,
        Drawn<Strapping.Pad> pad,
        Drawn<Typed<Length>> u,
        Drawn<Typed<Length>> v,
        Drawn<Typed<Angle>> toward,
        Drawn<Typed<Length>> padToStud,
        Drawn<Typed<Length>> studToHeel,
        Drawn<Typed<Length>> heelOver,
        Drawn<Typed<Torque>> torque) {}
