package setwright.window.state;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Properties;
import org.jspecify.annotations.Nullable;

/** Keeps a person's settings in a small file; where it cannot be read or written, the window goes on without it. */
public final class SettingsFile {
    private static final String NAME = "settings.properties";
    private static final String QUICK = "quick.";
    private static final String FIGURES = "figures";

    private final Path file;

    /** @param folder the person's own folder for this program's data */
    public SettingsFile(Path folder) {
        file = folder.resolve(NAME);
    }

    public Settings read(Path workingFolder) {
        Properties read = new Properties();
        if (Files.isReadable(file)) {
            try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                read.load(in);
            } catch (IOException | IllegalArgumentException unreadable) {
                read.clear();
            }
        }
        String shop = read.getProperty("shop", "");
        return new Settings(
                shop.isBlank() ? null : Path.of(shop),
                workingFolder,
                read.getProperty("person", ""),
                read.getProperty("look", ""),
                !read.getProperty("lessons", "").equals("no"),
                recent(read),
                quick(read),
                figures(read));
    }

    private static List<Path> recent(Properties read) {
        List<Path> recent = new ArrayList<>();
        for (int i = 1; i <= Settings.MOST_RECENT; i++) {
            String file = read.getProperty("recent." + i, "");
            if (!file.isBlank()) {
                recent.add(Path.of(file));
            }
        }
        return recent;
    }

    private static List<String> figures(Properties read) {
        return Arrays.stream(read.getProperty(FIGURES, "").split(","))
                .filter(name -> !name.isBlank())
                .toList();
    }

    /** Whether it could be written. */
    public boolean write(Settings settings) {
        Properties written = new Properties();
        put(written, "shop", settings.shop() == null ? null : settings.shop().toString());
        put(written, "person", settings.person());
        put(written, "look", settings.look());
        settings.quick().texts().forEach((field, text) -> put(written, QUICK + field.key(), text));
        put(written, FIGURES, String.join(",", settings.figures()));
        put(written, "lessons", settings.lessons() ? null : "no");
        for (int i = 0; i < settings.recent().size(); i++) {
            put(written, "recent." + (i + 1), settings.recent().get(i).toString());
        }
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
                written.store(out, null);
            }
            return true;
        } catch (IOException unwritable) {
            return false;
        }
    }

    private static QuickFields quick(Properties read) {
        QuickFields fields = QuickFields.USUAL;
        for (QuickField field : QuickField.values()) {
            fields = fields.with(field, read.getProperty(QUICK + field.key(), ""));
        }
        return fields;
    }

    private static void put(Properties written, String key, @Nullable String value) {
        if (value != null && !value.isEmpty()) {
            written.setProperty(key, value);
        }
    }
}
