package setwright.file.shape;

import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.file.json.Problems;
import setwright.file.json.Tree;
import setwright.job.DeviceHolding;
import setwright.job.JobPlan;
import setwright.job.Plannable;
import setwright.job.RoughBody;
import setwright.job.SetUp;
import setwright.job.TableHolding;
import setwright.job.ViseHolding;
import setwright.quantity.Typed;

/** Derives shapes from records, and takes trees through them. */
public final class Shapes {
    /** Lists that came into the format later, or that most jobs have no use for. */
    private static final Map<Class<?>, List<String>> MAY_BE_LEFT_OUT = Map.of(
            JobPlan.class, List.of("relations", "received", "chosen"),
            SetUp.class, List.of("zeros"),
            ViseHolding.class, List.of("stops"),
            TableHolding.class, List.of("straps", "stops"),
            DeviceHolding.class, List.of("straps", "stops"),
            RoughBody.class, List.of("points"));

    private Shapes() {}

    /** The shape of a record that is no kind of a family. */
    public static FormShape record(Class<?> type) {
        return form(type, "");
    }

    /** The shape of a sealed family, or of one record of a family alone. */
    public static ChoiceShape family(Class<?> family) {
        List<FormShape> forms = new ArrayList<>();
        addForms(family, forms);
        return new ChoiceShape(family, forms);
    }

    /** The value of a checked tree; empty with a problem where a record refuses to be made. */
    public static <T> Optional<T> bind(Shape shape, Tree tree, Class<T> type, Problems problems) {
        try {
            return Optional.of(type.cast(shape.bind(tree)));
        } catch (Unfit e) {
            problems.add(e.at(), "", e.getMessage());
            return Optional.empty();
        }
    }

    private static void addForms(Class<?> type, List<FormShape> forms) {
        if (type.isRecord()) {
            forms.add(form(type, WrittenNames.kind(type)));
        } else {
            for (Class<?> permitted : type.getPermittedSubclasses()) {
                addForms(permitted, forms);
            }
        }
    }

    private static FormShape form(Class<?> type, String written) {
        List<FormShape.Key> keys = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            AnnotatedType annotated = component.getAnnotatedType();
            keys.add(new FormShape.Key(
                    component.getName(),
                    of(component.getGenericType()),
                    mayBeLeftOut(type, component) ? FormShape.Leave.EMPTY : leave(annotated),
                    component.getAccessor()));
        }
        return new FormShape(type, written, keys);
    }

    private static boolean mayBeLeftOut(Class<?> type, RecordComponent component) {
        return MAY_BE_LEFT_OUT.getOrDefault(type, List.of()).contains(component.getName());
    }

    private static FormShape.Leave leave(AnnotatedType type) {
        if (type.isAnnotationPresent(Nullable.class)) {
            return FormShape.Leave.NULL;
        }
        boolean plannable = type instanceof AnnotatedParameterizedType
                && ((ParameterizedType) type.getType()).getRawType().equals(Plannable.class);
        return plannable ? FormShape.Leave.PENCILLED : FormShape.Leave.NEVER;
    }

    private static Shape of(Type type) {
        if (type instanceof ParameterizedType generic) {
            return of((Class<?>) generic.getRawType(), generic.getActualTypeArguments());
        }
        Class<?> plain = (Class<?>) type;
        if (plain.equals(String.class)) {
            return new WordsShape();
        }
        if (plain.equals(int.class) || plain.equals(Integer.class)) {
            return new CountShape();
        }
        if (plain.equals(boolean.class)) {
            return new FlagShape();
        }
        if (plain.equals(Tree.class)) {
            return new TreeShape();
        }
        if (plain.isEnum()) {
            return new NameShape(plain);
        }
        return plain.isSealed() ? family(plain) : record(plain);
    }

    private static Shape of(Class<?> raw, Type... arguments) {
        if (raw.equals(Typed.class)) {
            return new AmountShape(Amount.of((Class<?>) arguments[0]));
        }
        if (raw.equals(List.class)) {
            return new ListShape(of(arguments[0]));
        }
        if (raw.equals(Map.class)) {
            return new MapShape(new NameShape((Class<?>) arguments[0]), of(arguments[1]));
        }
        if (raw.equals(Plannable.class)) {
            return plannable(of(arguments[0]));
        }
        throw new IllegalArgumentException(raw + " has no place in files yet.");
    }

    /** A measured value stands under the key {@code measured}. */
    private static PlannableShape plannable(Shape each) {
        List<FormShape.Key> keys = new ArrayList<>();
        keys.add(new FormShape.Key(PlannableShape.MEASURED, each, FormShape.Leave.NEVER, accessor("value")));
        keys.add(new FormShape.Key("by", new WordsShape(), FormShape.Leave.NEVER, accessor("by")));
        keys.add(new FormShape.Key("at", new WordsShape(), FormShape.Leave.NEVER, accessor("at")));
        return new PlannableShape(each, new FormShape(Plannable.Measured.class, "", keys));
    }

    private static Method accessor(String component) {
        return Arrays.stream(Plannable.Measured.class.getRecordComponents())
                .filter(candidate -> candidate.getName().equals(component))
                .map(RecordComponent::getAccessor)
                .findFirst()
                .orElseThrow();
    }
}
