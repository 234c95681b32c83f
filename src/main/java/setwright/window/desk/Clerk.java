package setwright.window.desk;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Does what has to do with files beside the desk, one thing after the other. */
final class Clerk implements AutoCloseable {
    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "files");
        thread.setDaemon(true);
        return thread;
    });
    private final Executor deliver;
    private String doing = "";
    private String working = "";
    private int open;

    /** @param deliver brings results to the thread that uses the desk */
    Clerk(Executor deliver) {
        this.deliver = deliver;
    }

    /**
     * Hands over a piece of work.
     *
     * @param what it is, in words
     * @param then takes the result on the thread that uses the desk
     */
    <T> void give(String what, Supplier<T> work, Consumer<T> then) {
        open++;
        doing = what;
        thread.execute(() -> {
            Supplier<T> result = result(work);
            deliver.execute(() -> {
                open--;
                then.accept(result.get());
            });
        });
    }

    /** What came out; where the work broke down, that comes out where the result is asked for. */
    private static <T> Supplier<T> result(Supplier<T> work) {
        try {
            T result = work.get();
            return () -> result;
        } catch (RuntimeException why) {
            return () -> {
                throw why;
            };
        }
    }

    boolean busy() {
        return open > 0;
    }

    /** What it is at; empty while it rests. */
    String doing() {
        return busy() ? doing : "";
    }

    /** Whether what takes its time is another than the last time somebody asked. */
    boolean tick() {
        String now = doing();
        boolean other = !now.equals(working);
        working = now;
        return other;
    }

    /** What takes its time; empty while nothing does. */
    String working() {
        return busy() ? working : "";
    }

    @Override
    public void close() {
        thread.shutdown();
    }
}
