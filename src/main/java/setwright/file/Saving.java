package setwright.file;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/**
 * Writes a file so that at every moment either the old or the new one is whole: the new one is written beside it and
 * forced to the disk, the old one is copied to {@code NAME.backup}, then the new one takes its place.
 */
final class Saving {
    private final Path asked;

    Saving(Path file) {
        this.asked = file;
    }

    /** What writes the new file. */
    @FunctionalInterface
    interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    void write(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        write(out -> out.write(bytes));
    }

    void write(Content content) throws IOException {
        if (Files.isDirectory(asked)) {
            throw new IOException(asked + " is a folder; save under the name of a file in it.");
        }
        try {
            Path file = Files.exists(asked) ? asked.toRealPath() : asked.toAbsolutePath();
            replace(file, beside(file, ".saving"), content);
        } catch (NoSuchFileException e) {
            throw new IOException("There is no folder for " + asked + "; make it, or save elsewhere.", e);
        } catch (AccessDeniedException e) {
            throw new IOException(
                    asked + " was not saved: writing in its folder is not allowed. What was there stays as it was;"
                            + " save elsewhere, or ask for the permission.",
                    e);
        } catch (IOException e) {
            throw new IOException(
                    asked + " was not saved: " + reason(e) + ". What was there stays as it was; save elsewhere, or make"
                            + " room and save again.",
                    e);
        }
    }

    private static void replace(Path file, Path fresh, Content content) throws IOException {
        try {
            writeWhole(fresh, content);
            if (Files.exists(file)) {
                keepPermissions(file, fresh);
                backUp(file);
            }
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            if (Files.isRegularFile(fresh)) {
                Files.deleteIfExists(fresh);
            }
        }
        forceFolder(file);
    }

    private static void writeWhole(Path fresh, Content content) throws IOException {
        try (FileChannel channel = FileChannel.open(
                        fresh,
                        StandardOpenOption.CREATE,
                        StandardOpenOption.TRUNCATE_EXISTING,
                        StandardOpenOption.WRITE);
                OutputStream out = Channels.newOutputStream(channel)) {
            content.writeTo(out);
            out.flush();
            channel.force(true);
        }
    }

    private static void keepPermissions(Path file, Path fresh) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(fresh, PosixFileAttributeView.class);
        if (view != null) {
            view.setPermissions(Files.getPosixFilePermissions(file));
        }
    }

    /** The old backup too is replaced by a whole one only. */
    private static void backUp(Path file) throws IOException {
        Path backup = beside(file, ".backup");
        Path fresh = beside(file, ".backup.saving");
        Files.copy(file, fresh, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.COPY_ATTRIBUTES);
        try {
            Files.move(fresh, backup, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    /** So that the new name outlives a loss of power; not every system lets a folder be opened for it. */
    private static void forceFolder(Path file) {
        try (FileChannel folder = FileChannel.open(file.resolveSibling(""), StandardOpenOption.READ)) {
            folder.force(true);
        } catch (IOException e) {
            return;
        }
    }

    private static Path beside(Path file, String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }

    private static String reason(IOException e) {
        String message = e.getMessage();
        return message == null ? e.getClass().getSimpleName() : message;
    }
}
