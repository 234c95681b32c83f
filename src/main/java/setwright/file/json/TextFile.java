package setwright.file.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads a file as UTF-8, strictly; a byte order mark of UTF-8 is passed over. */
public final class TextFile {
    private TextFile() {}

    public static TreeRead read(Path file) {
        if (Files.isDirectory(file)) {
            return TreeRead.refused(Problem.whole(file + " is a folder; name a file in it."));
        }
        try (InputStream in = Files.newInputStream(file)) {
            return read(in);
        } catch (NoSuchFileException e) {
            return TreeRead.refused(Problem.whole("There is no file " + file + "."));
        } catch (AccessDeniedException e) {
            return TreeRead.refused(Problem.whole(file + " may not be read; ask for its read permission."));
        } catch (IOException e) {
            return TreeRead.refused(Problem.whole(file + " was not read: " + e.getMessage() + "."));
        }
    }

    /** Reads a stream to its end; the caller closes it. */
    public static TreeRead read(InputStream in) throws IOException {
        byte[] bytes = in.readNBytes(Limits.DOCUMENT + 1);
        return bytes.length > Limits.DOCUMENT ? TreeRead.refused(TreeReader.tooLong()) : read(bytes);
    }

    private static TreeRead read(byte[] bytes) {
        if (starts(bytes, 0xFF, 0xFE) || starts(bytes, 0xFE, 0xFF)) {
            return TreeRead.refused(Problem.at(
                    new Place(1, 1), "", "The file is written in UTF-16; save it as UTF-8, which alone is read."));
        }
        int mark = starts(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        CharBuffer text = CharBuffer.allocate(bytes.length);
        ByteBuffer in = ByteBuffer.wrap(bytes, mark, bytes.length - mark);
        CoderResult result = decoder.decode(in, text, true);
        text.flip();
        if (result.isError()) {
            Place at = Place.of(text, text.length());
            return TreeRead.refused(Problem.at(at, "", notUtf8(in.get(in.position()))));
        }
        return TreeReader.read(text.toString());
    }

    private static String notUtf8(byte found) {
        return "Found the byte " + Integer.toHexString(found & 0xFF)
                + " (hexadecimal), which is no UTF-8; save the file as UTF-8, which alone is read.";
    }

    private static boolean starts(byte[] bytes, int... first) {
        for (int i = 0; i < first.length; i++) {
            if (bytes.length <= i || (bytes[i] & 0xFF) != first[i]) {
                return false;
            }
        }
        return true;
    }
}
