package setwright.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class HeightStackTest {
    /** A 6 in vise with 32 mm parallels: bed 73, jaw top 117 mm (common practice). */
    private final HeightStack stack = HeightStack.onTable()
            .then("vise bed", 73)
            .then("top of parallels", 32)
            .then("part top", 38)
            .above("vise bed", "jaw top", 44);

    @Test
    void every_level_is_a_height_over_the_table() {
        assertThat(stack.height("table")).isZero();
        assertThat(stack.height("part top")).isEqualTo(143);
        assertThat(stack.height("jaw top")).isEqualTo(117);
        assertThat(stack.highest()).isEqualTo(143);
    }

    @Test
    void levels_are_listed_rising() {
        assertThat(stack.rising())
                .extracting(Level::name)
                .containsExactly("table", "vise bed", "top of parallels", "jaw top", "part top");
    }

    @Test
    void a_tool_adds_its_point_its_holder_face_and_the_nose() {
        var tool = new ToolStack(50, 40);
        var with = stack.with(tool, 143);

        assertThat(with.height(ToolStack.TOOL_POINT)).isEqualTo(143);
        assertThat(with.height(ToolStack.HOLDER_FACE)).isEqualTo(183);
        assertThat(with.height(ToolStack.NOSE)).isEqualTo(233).isEqualTo(tool.nose(143));
        assertThat(tool.point(233)).isEqualTo(143);
        assertThat(stack.levels()).hasSize(5);
    }

    @Test
    void a_level_that_is_missing_or_named_twice_is_said() {
        assertThatThrownBy(() -> stack.height("soft jaw"))
                .hasMessageContaining("no level called soft jaw")
                .hasMessageContaining("vise bed");
        assertThatThrownBy(() -> stack.then("jaw top", 1)).hasMessageContaining("names each level once");
        assertThatThrownBy(() -> new ToolStack(-1, 10)).hasMessageContaining("below the nose");
    }
}
