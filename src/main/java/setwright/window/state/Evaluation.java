package setwright.window.state;

import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * One background thread that works out what was wanted last. A newer wish cancels the running work, whatever was wanted
 * between is skipped, and a result that comes too late is dropped.
 *
 * @param <I> what is worked on
 * @param <O> what comes out, several times where the work has stages
 */
public final class Evaluation<I, O> implements AutoCloseable {
    private final Work<I, O> work;
    private final Receiver<O> receiver;
    private final Executor deliver;
    private final Thread thread;
    private final Object lock = new Object();

    private @Nullable I wanted;
    private long generation;
    private Progress progress = new Progress();
    private boolean busy;
    private boolean closed;

    /** What is done in the background; it publishes each stage as soon as it stands. */
    @FunctionalInterface
    public interface Work<I, O> {
        void work(I input, Progress progress, Consumer<O> publish);
    }

    /** Who is told, by way of the executor that was handed in. */
    public interface Receiver<O> {
        void arrived(O result);

        void failed(RuntimeException why);

        /** The newest wish is worked out to its last stage. */
        void finished();
    }

    /** @param deliver brings results to the thread that may show them */
    public Evaluation(Work<I, O> work, Receiver<O> receiver, Executor deliver) {
        this.work = work;
        this.receiver = receiver;
        this.deliver = deliver;
        this.thread = new Thread(this::run, "evaluation");
        thread.setDaemon(true);
        thread.start();
    }

    /** Works this out instead of anything that was wanted before. */
    public void want(I input) {
        synchronized (lock) {
            wanted = input;
            generation++;
            progress.cancel();
            lock.notifyAll();
        }
    }

    /** Lets the running work go without starting other. */
    public void stop() {
        synchronized (lock) {
            wanted = null;
            generation++;
            progress.cancel();
        }
    }

    public boolean busy() {
        synchronized (lock) {
            return busy || wanted != null;
        }
    }

    public Progress.Standing standing() {
        synchronized (lock) {
            return progress.standing();
        }
    }

    @Override
    public void close() {
        synchronized (lock) {
            closed = true;
            progress.cancel();
            lock.notifyAll();
        }
    }

    private void run() {
        try {
            for (Wish<I> wish = next(); wish != null; wish = next()) {
                workOut(wish);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private record Wish<I>(I input, long generation, Progress progress) {}

    private @Nullable Wish<I> next() throws InterruptedException {
        synchronized (lock) {
            busy = false;
            while (wanted == null && !closed) {
                lock.wait();
            }
            I input = wanted;
            if (closed || input == null) {
                return null;
            }
            wanted = null;
            busy = true;
            progress = new Progress();
            return new Wish<>(input, generation, progress);
        }
    }

    private void workOut(Wish<I> wish) {
        try {
            work.work(wish.input, wish.progress, result -> tell(wish, () -> receiver.arrived(result)));
        } catch (CancellationException dropped) {
            return;
        } catch (RuntimeException why) {
            tell(wish, () -> receiver.failed(why));
        }
        synchronized (lock) {
            busy = false;
        }
        tell(wish, receiver::finished);
    }

    private void tell(Wish<I> wish, Runnable message) {
        deliver.execute(() -> {
            if (current(wish)) {
                message.run();
            }
        });
    }

    private boolean current(Wish<I> wish) {
        synchronized (lock) {
            return wish.generation == generation && !closed;
        }
    }
}
