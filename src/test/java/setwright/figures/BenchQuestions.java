package setwright.figures;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import setwright.file.ShopFolder;
import setwright.file.ShopRead;
import setwright.quantity.UnitSystem;
import setwright.shop.Shop;

/** A question or more to each bench figure, with bare metric numbers. */
public final class BenchQuestions {
    private static final Shop SHOP = ((ShopRead.Opened) ShopFolder.packed()).shop();

    private BenchQuestions() {}

    public static List<String> all() {
        try (var stream = Objects.requireNonNull(
                BenchQuestions.class.getResourceAsStream("bench-questions.txt"), "the questions")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    static Figure.Reply ask(String line, UnitSystem units) {
        Question question = Question.of(line);
        return Figures.required(question.figure()).ask(question, units, SHOP);
    }
}
