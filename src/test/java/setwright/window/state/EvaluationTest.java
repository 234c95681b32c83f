package setwright.window.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class EvaluationTest {
    private final BlockingQueue<String> told = new LinkedBlockingQueue<>();
    private final BlockingQueue<Runnable> onItsWay = new LinkedBlockingQueue<>();
    private final CountDownLatch started = new CountDownLatch(1);
    private final CountDownLatch mayGoOn = new CountDownLatch(1);

    private Evaluation<String, String> evaluation = new Evaluation<>((a, b, c) -> {}, receiver(), Runnable::run);

    @AfterEach
    void close() {
        evaluation.close();
    }

    @Test
    void each_stage_is_shown_as_soon_as_it_stands() throws Exception {
        evaluation = new Evaluation<>(EvaluationTest::twoStages, receiver(), Runnable::run);
        evaluation.want("a");

        assertThat(next()).isEqualTo("plan of a");
        assertThat(next()).isEqualTo("remedies of a");
        assertThat(next()).isEqualTo("finished");
    }

    @Test
    void a_newer_wish_cancels_the_running_work_and_skips_those_between() throws Exception {
        evaluation = new Evaluation<>(this::waiting, receiver(), Runnable::run);
        evaluation.want("a");
        assertThat(started.await(10, TimeUnit.SECONDS)).isTrue();
        evaluation.want("b");
        evaluation.want("c");
        mayGoOn.countDown();

        assertThat(next()).isEqualTo("plan of c");
        assertThat(next()).isEqualTo("finished");
        assertThat(told).isEmpty();
    }

    @Test
    void a_result_that_was_on_its_way_when_a_newer_was_wanted_is_dropped() throws Exception {
        evaluation = new Evaluation<>(EvaluationTest::twoStages, receiver(), onItsWay::add);
        evaluation.want("a");
        Runnable stale = onItsWay.poll(10, TimeUnit.SECONDS);
        evaluation.want("b");
        assertThat(stale).isNotNull();
        stale.run();

        assertThat(told).isEmpty();
    }

    @Test
    void work_that_fails_says_why_and_the_next_wish_is_worked_out() throws Exception {
        evaluation = new Evaluation<>(EvaluationTest::failing, receiver(), Runnable::run);
        evaluation.want("a");
        assertThat(next()).isEqualTo("failed: no machine");
        assertThat(next()).isEqualTo("finished");

        evaluation.want("b");
        assertThat(next()).isEqualTo("plan of b");
    }

    @Test
    void stopped_work_says_nothing_more() throws Exception {
        evaluation = new Evaluation<>(this::waiting, receiver(), Runnable::run);
        evaluation.want("a");
        assertThat(started.await(10, TimeUnit.SECONDS)).isTrue();
        evaluation.stop();
        mayGoOn.countDown();
        evaluation.want("b");

        assertThat(next()).isEqualTo("plan of b");
    }

    private static void twoStages(String input, Progress progress, Consumer<String> publish) {
        publish.accept("plan of " + input);
        publish.accept("remedies of " + input);
    }

    private static void failing(String input, Progress progress, Consumer<String> publish) {
        if (input.equals("a")) {
            throw new IllegalStateException("no machine");
        }
        publish.accept("plan of " + input);
    }

    private void waiting(String input, Progress progress, Consumer<String> publish) {
        started.countDown();
        try {
            assertThat(mayGoOn.await(10, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
        progress.at("publishing", 0, 1);
        publish.accept("plan of " + input);
    }

    private Evaluation.Receiver<String> receiver() {
        return new Evaluation.Receiver<>() {
            @Override
            public void arrived(String result) {
                told.add(result);
            }

            @Override
            public void failed(RuntimeException why) {
                told.add("failed: " + why.getMessage());
            }

            @Override
            public void finished() {
                told.add("finished");
            }
        };
    }

    private String next() throws InterruptedException {
        return String.valueOf(told.poll(10, TimeUnit.SECONDS));
    }

    @Test
    void busy_ends_with_the_last_stage() throws Exception {
        evaluation = new Evaluation<>(this::waiting, receiver(), Runnable::run);
        evaluation.want("a");
        assertThat(started.await(10, TimeUnit.SECONDS)).isTrue();
        assertThat(evaluation.busy()).isTrue();
        mayGoOn.countDown();
        List<String> both = List.of(next(), next());

        assertThat(both).containsExactly("plan of a", "finished");
        assertThat(evaluation.busy()).isFalse();
    }
}
