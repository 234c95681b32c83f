package setwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.Rounds;
import setwright.file.json.Problem;
import setwright.job.Job;
import setwright.shop.Shop;

/** Good files with random damage are read as something whole or refused with reasons, and never throw. */
class MutationTest {
    private static final String GOOD = JobFile.text(Samples.bearingBlock(), Samples.drawnUp());
    private static final byte[] BYTES = GOOD.getBytes(StandardCharsets.UTF_8);
    private static final Shop SHOP = Samples.shop();

    /** What a hand or a disk might put in place of something else. */
    private static final List<String> SCRAPS = List.of(
            "\"",
            "{",
            "}",
            "[",
            "]",
            ",",
            ":",
            "null",
            "NaN",
            "-1",
            "1e400",
            "\"1e400 mm\"",
            "\"1e-400 mm\"",
            "\"0/0 mm\"",
            "\"-0 mm\"",
            "\"\\ud800\"",
            "\u0000",
            "\u00e9",
            "\"hole1\"",
            "{}",
            "[]",
            "true",
            "1.5",
            "\"1/0 in\"",
            "\"(1\"",
            "9999999999999999999",
            "\"kind\"",
            "\"1 mm + 2\"",
            "\n",
            "\"\"");

    private final Set<Class<?>> outcomes = new LinkedHashSet<>();

    @TempDir
    private Path folder;

    @Test
    void random_damage_to_bytes_never_throws_and_never_lets_through_what_is_not_finite() {
        Rounds.each(101, Rounds.count(50) * 4, (random, round) -> {
            byte[] damaged = BYTES.clone();
            for (int i = 0; i <= random.nextInt(4); i++) {
                damaged = damage(damaged, random);
            }
            holds(JobFile.read(Files.write(folder.resolve("job.json"), damaged), SHOP));
        });
    }

    @Test
    void random_scraps_in_place_of_values_never_throw_and_never_let_through_what_is_not_finite() {
        Rounds.each(102, Rounds.count(50) * 4, (random, round) -> {
            StringBuilder text = new StringBuilder(GOOD);
            for (int i = 0; i <= random.nextInt(3); i++) {
                int from = text.indexOf("\"", random.nextInt(text.length()));
                int to = text.indexOf("\"", Math.max(0, from) + 1) + 1;
                if (from >= 0 && to > from) {
                    text.replace(from, to, SCRAPS.get(random.nextInt(SCRAPS.size())));
                }
            }
            holds(JobFile.read(text.toString(), SHOP));
        });
    }

    private static byte[] damage(byte[] bytes, RandomGenerator random) {
        int at = random.nextInt(bytes.length);
        int length = Math.min(bytes.length - at, random.nextInt(40));
        byte[] damaged = bytes.clone();
        switch (random.nextInt(5)) {
            case 0 -> damaged[at] = (byte) random.nextInt(256);
            case 1 -> damaged[at] ^= (byte) (1 << random.nextInt(8));
            case 2 -> damaged = Arrays.copyOf(bytes, at + 1);
            case 3 -> System.arraycopy(bytes, random.nextInt(bytes.length - length), damaged, at, length);
            default -> Arrays.fill(damaged, at, at + length, (byte) " 0{[\"a".charAt(random.nextInt(6)));
        }
        return damaged;
    }

    /** A test that saw only one outcome would not have looked at the other. */
    @AfterEach
    void both_outcomes_were_seen() {
        assumeTrue(Rounds.count(50) >= 50);
        assertThat(outcomes).containsExactlyInAnyOrder(JobRead.Opened.class, JobRead.Refused.class);
    }

    private void holds(JobRead read) {
        outcomes.add(read.getClass());
        if (read instanceof JobRead.Opened opened) {
            finite(opened.job());
            Job again =
                    JobFileTest.opened(JobFile.text(opened.job(), null), SHOP).job();
            assertThat(again).isEqualTo(opened.job());
        } else {
            List<Problem> problems = ((JobRead.Refused) read).problems();
            assertThat(problems).isNotEmpty().allSatisfy(problem -> {
                assertThat(problem.message()).isNotBlank().doesNotContain("Exception", "null at", "tools.jackson");
                assertThat(problem.line()).isPositive();
                assertThat(problem.column()).isPositive();
            });
        }
    }

    private static void finite(Object value) {
        if (value instanceof Double number) {
            assertThat(number).isFinite();
        } else if (value instanceof List<?> list) {
            list.forEach(MutationTest::finite);
        } else if (value instanceof Map<?, ?> map) {
            map.values().forEach(MutationTest::finite);
        } else if (value instanceof Record) {
            for (RecordComponent component : value.getClass().getRecordComponents()) {
                Object part = part(component, value);
                if (part != null) {
                    finite(part);
                }
            }
        }
    }

    private static Object part(RecordComponent component, Object record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }
}
