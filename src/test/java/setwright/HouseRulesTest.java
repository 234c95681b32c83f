package setwright;

import static com.tngtech.archunit.core.domain.JavaModifier.FINAL;
import static com.tngtech.archunit.core.domain.JavaModifier.STATIC;
import static com.tngtech.archunit.core.domain.JavaModifier.SYNTHETIC;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.regex.Pattern;
import org.jspecify.annotations.NullMarked;

/** How code is written in this house, as far as class files show it. */
@AnalyzeClasses(packages = "setwright", importOptions = DoNotIncludeTests.class)
class HouseRulesTest {
    @ArchTest
    static final ArchRule names_say_what_a_thing_is =
            noClasses().should().haveNameMatching(".*[.$](Abstract\\w*|\\w*(Manager|Helper|Utils?|Impl|Base))(\\$.*)?");

    @ArchTest
    static final ArchRule static_fields_are_final = fields().that()
            .areStatic()
            .and()
            .doNotHaveModifier(SYNTHETIC)
            .should()
            .beFinal();

    @ArchTest
    static final ArchRule static_fields_hold_nothing_that_changes = fields().that()
            .haveModifier(STATIC)
            .and()
            .haveModifier(FINAL)
            .and()
            .doNotHaveModifier(SYNTHETIC)
            .should()
            .notHaveRawType(changeable());

    @ArchTest
    static final ArchRule static_fields_are_no_caches = noClasses()
            .should()
            .accessTargetWhere(calls(
                            "makes something to be filled later",
                            "java.util.(Weak|Identity)HashMap.<init> .*",
                            "java.util.concurrent..*<init> .*",
                            "java.util.Collections.synchronized.*")
                    .and(DescribedPredicate.describe(
                            "in a static initializer",
                            access -> access.getOrigin().getName().equals("<clinit>"))));

    @ArchTest
    static final ArchRule only_commands_print = noClasses()
            .that()
            .resideOutsideOfPackages("setwright", "setwright.command..")
            .should(ACCESS_STANDARD_STREAMS);

    @ArchTest
    static final ArchRule the_core_computes_alike_on_every_machine = inTheCoreNothing(
            "differs between machines (StrictMath does not)",
            "java.lang.Math.(a?(sin|cos|tan)h?|atan2|expm?1?|log(10|1p)?|pow|cbrt|hypot) .*");

    @ArchTest
    static final ArchRule clock_and_chance_are_handed_to_the_core = inTheCoreNothing(
            "differs between runs",
            "java.time.[A-Za-z.]+.now (?!java.time.Clock).*",
            "java.time.Clock.(system|tick).*",
            "java.time.ZoneId.systemDefault ",
            "java.util.Date.<init> ",
            "java.lang.System.(currentTimeMillis|nanoTime) ",
            "java.lang.Math.random ",
            "java.util.(Splittable)?Random.<init> ",
            "java.util.UUID.randomUUID ",
            "java.util.concurrent.ThreadLocalRandom.current ",
            "java.security.SecureRandom.*");

    @ArchTest
    static final ArchRule places_are_handed_to_the_core = inTheCoreNothing(
            "asks the machine where things are", "java.lang.System.(getenv|getProperty|getProperties) .*");

    @ArchTest
    static final ArchRule collections_of_the_core_have_an_order = inTheCoreNothing(
            "makes a collection without order (LinkedHashMap, TreeMap, EnumMap, List have one)",
            "java.util.Hash(Map|Set).<init> .*",
            "java.util.(Map|Set).copyOf .*",
            "java.util.stream.Collectors.to(Unmodifiable)?Set ",
            "java.util.stream.Collectors.toUnmodifiableMap .*",
            "java.util.stream.Collectors.toMap (?!.*Supplier).*",
            "java.util.stream.Collectors.groupingBy (?!.*Supplier).*");

    @ArchTest
    static final ArchRule locales_are_named = nothing(
            "depends on the locale of the machine",
            "java.util.Locale.getDefault .*",
            "java.lang.String.format java.lang.String,.*",
            "java.lang.String.(formatted .*|toLowerCase |toUpperCase )",
            "java.io.Print(Stream|Writer).(printf|format) java.lang.String,.*",
            "java.util.Formatter.<init> (?!.*Locale).*",
            "java.text.DecimalFormat.<init> (?!.*Symbols).*",
            "java.text.NumberFormat.get.*Instance ",
            "java.time.format.DateTimeFormatter.ofPattern java.lang.String");

    @ArchTest
    static final ArchRule character_sets_are_named = nothing(
            "depends on the character set of the machine",
            "java.nio.charset.Charset.defaultCharset ",
            "java.lang.String.getBytes ",
            "java.lang.String.<init> \\[B(, int, int)?",
            "java.io.File(Reader|Writer).<init> (?!.*Charset).*",
            "java.io.(InputStreamReader|OutputStreamWriter).<init> java.io.(In|Out)putStream",
            "java.io.Print(Stream|Writer).<init> java.io.OutputStream(, boolean)?",
            "java.io.ByteArrayOutputStream.toString ");

    @ArchTest
    static void every_package_says_that_it_is_null_marked(JavaClasses setwright) {
        assertThat(setwright.stream().map(JavaClass::getPackage).distinct())
                .allSatisfy(room -> assertThat(room.isAnnotatedWith(NullMarked.class))
                        .as(room.getName())
                        .isTrue());
    }

    private static ArchRule inTheCoreNothing(String doesWhat, String... calls) {
        return noClasses()
                .that()
                .resideInAnyPackage(Room.core())
                .should()
                .accessTargetWhere(calls(doesWhat, calls))
                .allowEmptyShould(true);
    }

    private static ArchRule nothing(String doesWhat, String... calls) {
        return noClasses().should().accessTargetWhere(calls(doesWhat, calls));
    }

    /** Uses of methods, each written as a pattern of its full name, a space, and the types of its parameters. */
    private static DescribedPredicate<JavaAccess<?>> calls(String doesWhat, String... methods) {
        var pattern = Pattern.compile(String.join("|", methods));
        return DescribedPredicate.describe(
                doesWhat, access -> pattern.matcher(written(access)).matches());
    }

    private static String written(JavaAccess<?> access) {
        return access.getTarget().getFullName().replace('(', ' ').replace(")", "");
    }

    private static DescribedPredicate<JavaClass> changeable() {
        var pattern = Pattern.compile("java\\.util\\.(Array|Linked|Hash|Tree|Enum|Weak|Identity|Priority|Bit)\\w*"
                + "|java\\.util\\.concurrent\\..*|java\\.lang\\.String(Builder|Buffer)|java\\.util\\..*Random|.*\\[]");
        return DescribedPredicate.describe(
                "that changes",
                type -> type.isArray() || pattern.matcher(type.getName()).matches());
    }
}
