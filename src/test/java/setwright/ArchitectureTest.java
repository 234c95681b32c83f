package setwright;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static setwright.Room.COMMAND;
import static setwright.Room.FILE;
import static setwright.Room.GEOMETRY;
import static setwright.Room.PAINT;
import static setwright.Room.WINDOW;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.net.MalformedURLException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.util.Arrays;
import java.util.stream.Stream;

/** Who may use whom: the rooms among themselves, and the libraries that belong to one room. */
@AnalyzeClasses(packages = "setwright", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
    private static final DescribedPredicate<JavaClass> DESKTOP = resideInAnyPackage(
                    "java.awt..", "javax.swing..", "javax.imageio..", "javax.print..", "java.beans..")
            .as("the desktop");

    private static final DescribedPredicate<JavaClass> NETWORK = resideInAnyPackage(
                    "java.net..", "javax.net..", "java.rmi..")
            .and(not(belongToAnyOf(URL.class, URI.class, MalformedURLException.class, URISyntaxException.class)))
            .or(resideInAPackage("java.nio.channels..").and(nameMatching(".*(Socket|Datagram|Multicast).*")))
            .as("the network");

    @ArchTest
    static final ArchRule every_class_is_in_a_room_or_at_the_door =
            classes().should().resideInAnyPackage(doorAnd(Room.values()));

    @ArchTest
    static void a_room_uses_only_the_rooms_below_it(JavaClasses setwright) {
        for (Room room : Room.values()) {
            classes()
                    .that()
                    .resideInAPackage(room.classes())
                    .should()
                    .onlyDependOnClassesThat(
                            resideInAnyPackage(room.classesItMayUse()).or(not(ours())))
                    .allowEmptyShould(true)
                    .check(setwright);
        }
    }

    @ArchTest
    static final ArchRule the_door_uses_command_and_window_only = classes()
            .that()
            .resideInAPackage("setwright")
            .should()
            .onlyDependOnClassesThat(
                    resideInAnyPackage(doorAnd(COMMAND, WINDOW)).or(not(ours())));

    @ArchTest
    static final ArchRule rooms_do_not_use_each_other_in_a_circle =
            slices().matching("setwright.(*)..").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule rooms_of_the_plan_do_not_use_each_other_in_a_circle =
            slices().matching("setwright.plan.(*)..").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule only_window_and_paint_know_the_desktop = noClasses()
            .that()
            .resideOutsideOfPackages(doorAnd(PAINT, WINDOW))
            .should()
            .dependOnClassesThat(DESKTOP);

    @ArchTest
    static final ArchRule the_door_only_asks_whether_there_is_a_display = noClasses()
            .that()
            .resideInAPackage("setwright")
            .should()
            .dependOnClassesThat(
                    DESKTOP.and(not(belongToAnyOf(java.awt.GraphicsEnvironment.class, java.awt.AWTError.class))));

    @ArchTest
    static final ArchRule only_window_and_paint_know_the_look_and_feel = only("com.formdev..", PAINT, WINDOW);

    @ArchTest
    static final ArchRule only_window_knows_the_layout = only("net.miginfocom..", WINDOW);

    @ArchTest
    static final ArchRule only_file_knows_jackson = only("tools.jackson..", FILE);

    @ArchTest
    static final ArchRule only_file_knows_the_annotations_of_jackson = only("com.fasterxml..", FILE);

    @ArchTest
    static final ArchRule only_geometry_knows_jts = only("org.locationtech..", GEOMETRY);

    @ArchTest
    static final ArchRule only_paint_knows_pdf = only("org.apache..", PAINT);

    @ArchTest
    static final ArchRule only_paint_knows_graphics_for_pdf = only("de.rototor..", PAINT);

    @ArchTest
    static final ArchRule only_command_knows_picocli = only("picocli..", COMMAND);

    @ArchTest
    static final ArchRule nobody_uses_the_network = noClasses().should().dependOnClassesThat(NETWORK);

    @ArchTest
    static void every_room_stands(JavaClasses setwright) {
        for (Room room : Room.values()) {
            assertThat(setwright.stream().filter(resideInAPackage(room.classes())))
                    .as(room.classes())
                    .isNotEmpty();
        }
    }

    private static ArchRule only(String library, Room... rooms) {
        return noClasses()
                .that()
                .resideOutsideOfPackages(Room.packages(rooms))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library);
    }

    private static String[] doorAnd(Room... rooms) {
        return Stream.concat(Stream.of("setwright"), Arrays.stream(Room.packages(rooms)))
                .toArray(String[]::new);
    }

    private static DescribedPredicate<JavaClass> ours() {
        return resideInAPackage("setwright..");
    }
}
