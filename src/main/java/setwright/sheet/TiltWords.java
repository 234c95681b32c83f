package setwright.sheet;

import setwright.job.Tilt;

/** How a part or the head is tilted, in the words of the machine. */
public final class TiltWords {
    private TiltWords() {}

    /** {@code 15 deg about the Y axis, on angle blocks of 15 deg}. */
    public static String of(Tilt tilt) {
        String angle = tilt.angle().text();
        String about = angle + " about the " + axis(tilt) + " axis";
        return switch (tilt.by()) {
            case ANGLE_BLOCKS -> about + ", on angle blocks of " + angle;
            case SINE_BAR -> about + ", on the sine bar";
            case PROTRACTOR -> about + ", set with the protractor";
            case ANGLE_PLATE -> about + ", by the angle plate";
            case SCRIBED_LINE -> about + ", a scribed line brought level with the surface gauge";
            case HEAD -> "head swivelled " + about + ", the part stays square";
        };
    }

    /** What is done to set it. */
    static String set(Tilt tilt) {
        String angle = tilt.angle().text();
        return switch (tilt.by()) {
            case ANGLE_BLOCKS -> "Angle blocks " + angle + " under the part, clean and wrung; part down on them.";
            case SINE_BAR -> "Sine bar on its gauge blocks for " + angle + "; part down on it.";
            case PROTRACTOR -> "Set the part to " + angle + " with the protractor before it is gripped hard.";
            case ANGLE_PLATE -> "Angle plate set to " + angle + ", part against its face.";
            case SCRIBED_LINE -> "Bring the scribed line level with the surface gauge, both ends the same.";
            case HEAD -> "Swivel the head " + angle + " about the " + axis(tilt) + " axis; nuts snug, then tight.";
        };
    }

    /** How it is proved before anything cuts. */
    static String proved(Tilt tilt) {
        return switch (tilt.by()) {
            case HEAD -> "swept with the indicator over an angle block or the set protractor: the same at both ends";
            case ANGLE_BLOCKS, SINE_BAR, PROTRACTOR, ANGLE_PLATE, SCRIBED_LINE ->
                "clocked along the face that is to be cut, or along the edge that stays level: nought end to end";
        };
    }

    private static String axis(Tilt tilt) {
        return tilt.about().name();
    }
}
