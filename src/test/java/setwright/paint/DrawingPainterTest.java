package setwright.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.drawing.Bench;
import setwright.drawing.Drawing;
import setwright.drawing.Mark;
import setwright.drawing.Place;
import setwright.drawing.Samples;
import setwright.drawing.Thumbnail;
import setwright.drawing.View;
import setwright.geometry.plane.Point2;
import setwright.plan.Plan;
import setwright.plan.part.OperationStage;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;

class DrawingPainterTest {
    private static final Printing METRIC = new Printing(UnitSystem.METRIC);
    private static final Rectangle2D BENCH = new Rectangle2D.Double(0, 0, 820, 524);
    private static final Set<View> ALL = EnumSet.allOf(View.class);
    private static final Plan PLAN = Samples.plan();

    @ParameterizedTest
    @EnumSource(Look.class)
    void a_bench_is_painted_in_every_look(Look look) {
        BufferedImage picture = painted(drill(PLAN, 0.1), look, Eye.FIT);

        assertThat(differing(picture, blank(look))).isGreaterThan(10_000);
    }

    @Test
    void a_longer_stick_out_makes_another_picture() {
        BufferedImage one = painted(drill(PLAN, 0), Look.LIGHT, Eye.FIT);
        BufferedImage other = painted(drill(Samples.withDrillOut("95"), 0), Look.LIGHT, Eye.FIT);

        assertThat(differing(one, other)).isGreaterThan(1000);
    }

    @Test
    void the_same_drawing_makes_the_same_picture() {
        assertThat(differing(
                        painted(drill(PLAN, 0.2), Look.DARK, Eye.FIT), painted(drill(PLAN, 0.2), Look.DARK, Eye.FIT)))
                .isZero();
    }

    @Test
    void a_print_is_black_on_white_and_grey() {
        BufferedImage print = painted(drill(PLAN, 0.1), Look.PRINT, Eye.FIT);

        assertThat(Arrays.stream(pixels(print)).distinct()).allSatisfy(rgb -> {
            int red = rgb >> 16 & 0xFF;
            assertThat(rgb >> 8 & 0xFF).isCloseTo(red, within(1));
            assertThat(rgb & 0xFF).isCloseTo(red, within(1));
        });
    }

    @Test
    void words_never_stand_on_words_nor_leave_the_bench() {
        for (Plan plan : List.of(PLAN, Samples.onThickParallels())) {
            for (OperationStage on : plan.part().setUp("s1").orElseThrow().operations()) {
                for (double wind : new double[] {0, 0.15, 0.5}) {
                    Place place = new Place("s1", on.operation(), wind);
                    Drawing drawing = Bench.of(plan, place, METRIC, EnumSet.of(View.FRONT, View.TOP));
                    assertApart(words(drawing, BENCH), place.toString());
                    assertApart(words(Bench.of(plan, place, METRIC, ALL), BENCH), place.toString());
                }
            }
        }
    }

    @Test
    void the_smallest_letters_are_eleven_px_and_do_not_shrink_with_the_drawing() {
        Graphics2D g = image(BENCH).createGraphics();
        g.setFont(g.getFont().deriveFont(8f));

        assertThat(Letters.of(g).font(Mark.Lettering.SMALL).getSize2D()).isGreaterThanOrEqualTo(11);
        assertThat(Letters.of(g).font(Mark.Lettering.PLAIN).getSize2D()).isGreaterThanOrEqualTo(12);
    }

    @Test
    void the_whole_drawing_is_within_the_area() {
        Drawing drawing = drill(PLAN, 0);
        Fit fit = DrawingPainter.fit(image(BENCH).createGraphics(), drawing, BENCH, Eye.FIT);

        assertThat(BENCH.contains(fit.px(drawing.extent()))).isTrue();
    }

    @Test
    void a_px_and_its_place_on_the_drawing_belong_together() {
        Fit fit = DrawingPainter.fit(image(BENCH).createGraphics(), drill(PLAN, 0), BENCH, new Eye(2, 30, -40));
        Point2 place = new Point2(12.5, 88);

        assertThat(fit.mm(fit.px(place)).distance(place)).isLessThan(1e-9);
    }

    @Test
    void zooming_keeps_the_place_under_the_pointer() {
        Drawing drawing = drill(PLAN, 0);
        Graphics2D g = image(BENCH).createGraphics();
        Point2D pointer = new Point2D.Double(300, 200);
        Point2 before = DrawingPainter.fit(g, drawing, BENCH, Eye.FIT).mm(pointer);
        Eye nearer = Eye.FIT.moved(3, 4).moved(-3, -4).zoomed(2.5, 300, 200);

        assertThat(DrawingPainter.fit(g, drawing, BENCH, nearer).mm(pointer).distance(before))
                .isLessThan(1e-9);
    }

    @Test
    void letters_that_are_out_of_sight_are_left_out_when_one_looks_closer() {
        Drawing drawing = drill(PLAN, 0);
        BufferedImage image = image(BENCH);
        int whole = DrawingPainter.lettered(image.createGraphics(), drawing, BENCH, Look.LIGHT, Eye.FIT)
                .size();
        int close = DrawingPainter.lettered(
                        image.createGraphics(), drawing, BENCH, Look.LIGHT, Eye.FIT.zoomed(6, 330, 260))
                .size();

        assertThat(close).isLessThan(whole);
    }

    @Test
    void a_small_picture_of_the_part_is_not_empty() {
        Rectangle2D area = new Rectangle2D.Double(0, 0, 96, 60);
        BufferedImage image = image(area);
        DrawingPainter.paint(image.createGraphics(), Thumbnail.of(PLAN, "s1"), area, Look.LIGHT);

        assertThat(Arrays.stream(pixels(image)).distinct().count()).isGreaterThan(10);
    }

    @Test
    void an_empty_drawing_is_paper() {
        assertThat(differing(painted(Drawing.EMPTY, Look.LIGHT, Eye.FIT), blank(Look.LIGHT)))
                .isZero();
    }

    private static Drawing drill(Plan plan, double wind) {
        return Bench.of(plan, new Place("s1", "h2-drill", wind), METRIC, ALL);
    }

    private static List<Rectangle2D> words(Drawing drawing, Rectangle2D area) {
        return DrawingPainter.lettered(image(area).createGraphics(), drawing, area, Look.LIGHT, Eye.FIT);
    }

    private static void assertApart(List<Rectangle2D> words, String where) {
        for (int i = 0; i < words.size(); i++) {
            assertThat(BENCH.contains(words.get(i)))
                    .as(where + " " + words.get(i))
                    .isTrue();
            for (int j = 0; j < i; j++) {
                Rectangle2D both = words.get(i).createIntersection(words.get(j));
                assertThat(both.getWidth() > 1 && both.getHeight() > 1)
                        .as(where + ": " + words.get(i) + " and " + words.get(j))
                        .isFalse();
            }
        }
    }

    private static BufferedImage painted(Drawing drawing, Look look, Eye eye) {
        BufferedImage image = image(BENCH);
        DrawingPainter.paint(image.createGraphics(), drawing, BENCH, look, eye);
        return image;
    }

    private static BufferedImage blank(Look look) {
        BufferedImage image = image(BENCH);
        Graphics2D g = image.createGraphics();
        g.setColor(look.colours().paper());
        g.fill(BENCH);
        return image;
    }

    private static BufferedImage image(Rectangle2D area) {
        return new BufferedImage((int) area.getWidth(), (int) area.getHeight(), BufferedImage.TYPE_INT_RGB);
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    private static int differing(BufferedImage one, BufferedImage other) {
        int[] a = pixels(one);
        int[] b = pixels(other);
        int count = 0;
        for (int i = 0; i < a.length; i++) {
            count += a[i] == b[i] ? 0 : 1;
        }
        return count;
    }
}
