package setwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.geometry.Side;
import setwright.job.Blank;
import setwright.job.DeviceHolding;
import setwright.job.FaceState;
import setwright.job.Feature;
import setwright.job.Holding;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.Operation;
import setwright.job.Pattern;
import setwright.job.Plannable;
import setwright.job.SetUp;
import setwright.job.Size;
import setwright.job.StopAt;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Torque;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;

/** Every kind of blank, feature, pattern, holding and operation is written down and read back as it was. */
class EveryNounTest {
    private static final Reading READING = new Reading(UnitSystem.METRIC);

    static Stream<Job> jobs() {
        List<Job> all = new ArrayList<>();
        kinds(Blank.class).forEach(kind -> all.add(with(plan().withBlank((Blank) sample(kind)))));
        kinds(Feature.class).forEach(kind -> all.add(feature((Feature) sample(kind))));
        kinds(Pattern.class).forEach(kind -> all.add(feature(drilled((Pattern) sample(kind)))));
        kinds(Holding.class).forEach(kind -> all.add(setUp(setUp().withHolding((Holding) sample(kind)))));
        for (DeviceHolding.On on : DeviceHolding.On.values()) {
            all.add(setUp(setUp().withHolding(DeviceHolding.pencilled(on))));
        }
        for (Operation.Kind kind : Operation.Kind.values()) {
            all.add(setUp(setUp().withOperations(List.of(Operation.pencilled("o9", kind, List.of("hole2"))))));
        }
        all.add(setUp((SetUp) sample(SetUp.class)));
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void a_job_with_it_is_read_back_as_it_was_written(Job job) {
        String text = JobFile.text(job, null);

        JobRead read = JobFile.read(text, Samples.shop());

        assertThat(read)
                .isInstanceOfSatisfying(
                        JobRead.Opened.class, opened -> assertThat(opened.job()).isEqualTo(job));
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void a_job_with_it_fits_the_schema(Job job) {
        assertThat(SchemaTest.errors(Schema.JOB, JobFile.text(job, null))).isEmpty();
    }

    private static JobPlan plan() {
        return Samples.bearingBlock().plan();
    }

    private static SetUp setUp() {
        return plan().setUps().get(0).withOperations(List.of());
    }

    private static Job with(JobPlan plan) {
        return new Job(plan, Samples.bearingBlock().record());
    }

    private static Job setUp(SetUp setUp) {
        return with(plan().withSetUps(List.of(setUp)));
    }

    private static Job feature(Feature feature) {
        List<Feature> features = new ArrayList<>(plan().features());
        features.add(feature);
        return with(plan().withFeatures(features));
    }

    private static Hole drilled(Pattern place) {
        Hole like = (Hole) sample(Hole.class);
        return new Hole(
                like.id(),
                like.note(),
                like.side(),
                Hole.Make.PLAIN,
                like.size(),
                null,
                null,
                null,
                place,
                null,
                like.mouth(),
                like.got());
    }

    private static Stream<Class<?>> kinds(Class<?> family) {
        return Stream.of(family.getPermittedSubclasses());
    }

    /** A record with something in every component. */
    private static Object sample(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types = new Class<?>[components.length];
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            boolean stop = type.equals(StopAt.class) && components[i].getName().equals("id");
            values[i] = stop ? "x8" : value(components[i].getName(), components[i].getGenericType());
        }
        try {
            var constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(type + " cannot be made", e);
        }
    }

    private static Object value(String name, Type type) {
        if (type instanceof ParameterizedType generic) {
            return generic(name, (Class<?>) generic.getRawType(), generic.getActualTypeArguments());
        }
        Class<?> plain = (Class<?>) type;
        if (plain.equals(Size.class)) {
            return Size.of(READING.length("12 mm"));
        }
        if (plain.equals(String.class)) {
            return text(name);
        }
        if (plain.equals(int.class) || plain.equals(Integer.class)) {
            return name.equals("quarterTurns") ? 1 : 6;
        }
        if (plain.equals(boolean.class)) {
            return true;
        }
        if (plain.isEnum()) {
            return name.equals("make") ? Hole.Make.TAPPED : plain.getEnumConstants()[0];
        }
        return plain.isSealed() ? sample(plain.getPermittedSubclasses()[0]) : sample(plain);
    }

    private static Object text(String name) {
        return switch (name) {
            case "id" -> "x7";
            case "thread" -> "M6";
            case "fit" -> "H7";
            case "of" -> "outline";
            case "stop", "jaws" -> "none";
            default -> "some " + name;
        };
    }

    private static Object generic(String name, Class<?> raw, Type[] arguments) {
        if (raw.equals(Typed.class)) {
            return typed((Class<?>) arguments[0]);
        }
        if (raw.equals(Plannable.class)) {
            return arguments[0].equals(String.class)
                    ? Plannable.pencilled()
                    : Plannable.inked(value(name, arguments[0]));
        }
        if (raw.equals(Map.class)) {
            Map<Side, FaceState> faces = new EnumMap<>(Side.class);
            faces.put(Side.TOP, FaceState.CAST);
            return faces;
        }
        return name.equals("operations") ? List.of() : List.of(value(name, arguments[0]));
    }

    private static Typed<?> typed(Class<?> quantity) {
        if (quantity.equals(Length.class)) {
            return READING.length("12 mm");
        }
        if (quantity.equals(Angle.class)) {
            return new Typed<>("30 deg", new Angle(READING.inside(setwright.quantity.Measure.ANGLE, "30 deg")));
        }
        if (quantity.equals(Torque.class)) {
            return new Typed<>("40 N m", new Torque(READING.inside(setwright.quantity.Measure.TORQUE, "40 N m")));
        }
        throw new AssertionError("No sample of " + quantity);
    }
}
