package setwright.quantity;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.lang.reflect.Field;
import java.util.Comparator;
import java.util.List;

/** Every rule that stands in a static field of some classes. Classes without one are not initialized. */
record PublishedRules(List<Rule> all) {
    static PublishedRules in(JavaClasses classes) {
        return new PublishedRules(classes.stream()
                .flatMap(type -> type.getFields().stream())
                .filter(field -> field.getModifiers().contains(JavaModifier.STATIC))
                .filter(field -> field.getRawType().isAssignableTo(Rule.class))
                .sorted(Comparator.comparing(JavaField::getFullName))
                .map(PublishedRules::value)
                .toList());
    }

    List<Formula> formulas() {
        return all.stream()
                .filter(Formula.class::isInstance)
                .map(Formula.class::cast)
                .toList();
    }

    private static Rule value(JavaField field) {
        try {
            Field reflected = field.reflect();
            reflected.setAccessible(true);
            return (Rule) reflected.get(null);
        } catch (IllegalAccessException closed) {
            throw new AssertionError(field.getFullName() + " cannot be looked at", closed);
        }
    }
}
