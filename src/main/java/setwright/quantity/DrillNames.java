package setwright.quantity;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import setwright.quantity.NamedSize.Series;

/**
 * Number drills 1 to 80, letter drills A to Z and fractions of an inch up to one by 64ths, by their names. Source: the
 * first line of {@code drill-sizes.csv}.
 */
public final class DrillNames {
    private static final DrillNames PUBLISHED = new DrillNames(rows());

    private static final int LONGEST = 40;
    private static final int WITHOUT_CASE = Pattern.CASE_INSENSITIVE;
    private static final Pattern DRILL = Pattern.compile("(.+?)\\s+drill", WITHOUT_CASE);
    private static final Pattern NUMBER = Pattern.compile("(?:#|no\\.?|number)\\s*0*([0-9]+)", WITHOUT_CASE);
    private static final Pattern LETTER = Pattern.compile("(?:letter\\s+)?([a-z])", WITHOUT_CASE);
    private static final Pattern FRACTION =
            Pattern.compile("([0-9]{1,3})/([1-9][0-9]{0,2})\\s*(?:in\\.?|inch|\"|″|”)?", WITHOUT_CASE);
    private static final Pattern ONE = Pattern.compile("1\\s*(?:in\\.?|inch|\"|″|”)", WITHOUT_CASE);

    private final List<NamedSize> sizes;

    private DrillNames(List<NamedSize> sizes) {
        this.sizes = sizes;
    }

    public static DrillNames published() {
        return PUBLISHED;
    }

    /** All of them: numbers, letters, fractions, each series in the order of its names. */
    public List<NamedSize> all() {
        return sizes;
    }

    /**
     * The size with this name: {@code #7}, {@code No 7}, {@code number 7}, {@code F}, {@code letter F}, {@code 27/64},
     * {@code 27/64 in}, each also with {@code drill} behind it. Empty where the table has none of that name.
     */
    public Optional<Length> size(String name) {
        if (name.length() > LONGEST) {
            return Optional.empty();
        }
        String bare = withoutDrill(name);
        return called(bare).or(() -> fraction(bare)).map(NamedSize::size);
    }

    /** The sizes nearest to a length, nearest first, of two as near the smaller first. */
    public List<NamedSize> near(Length size, int howMany) {
        return sizes.stream()
                .sorted(Comparator.<NamedSize>comparingDouble(
                                named -> Math.abs(named.over(size).mm()))
                        .thenComparingDouble(named -> named.size().mm()))
                .limit(howMany)
                .toList();
    }

    /**
     * What a text means that names a number or letter drill, or says {@code drill} behind a fraction; a fraction alone
     * is not taken for a name here.
     *
     * @throws Unreadable where it names a drill that the table does not have
     */
    static Optional<Rational> named(String text) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        String bare = withoutDrill(text);
        boolean isName = NUMBER.matcher(bare).matches() || LETTER.matcher(bare).matches();
        if (!isName && bare.equals(text.strip())) {
            return Optional.empty();
        }
        Length size = PUBLISHED
                .size(bare)
                .orElseThrow(
                        () -> new Unreadable(
                                text.strip()
                                        + " is not among the drill sizes, which run from #1 to #80, from A to Z and by 1/64 in to 1 in."));
        return Optional.of(Rational.asWritten(size.mm()));
    }

    private Optional<NamedSize> called(String name) {
        Matcher number = NUMBER.matcher(name);
        if (number.matches()) {
            return find(Series.NUMBER, "#" + number.group(1));
        }
        Matcher letter = LETTER.matcher(name);
        return letter.matches() ? find(Series.LETTER, letter.group(1).toUpperCase(Locale.ROOT)) : Optional.empty();
    }

    private Optional<NamedSize> find(Series series, String name) {
        return sizes.stream()
                .filter(named -> named.series() == series && named.name().equals(name))
                .findFirst();
    }

    private Optional<NamedSize> fraction(String name) {
        Matcher written = FRACTION.matcher(name);
        if (ONE.matcher(name).matches()) {
            return fraction(Rational.ONE);
        }
        return written.matches()
                ? fraction(Rational.decimal(written.group(1)).over(Rational.decimal(written.group(2))))
                : Optional.empty();
    }

    private Optional<NamedSize> fraction(Rational inches) {
        double mm = inches.times(Definitions.INCH).nearest();
        return sizes.stream()
                .filter(named ->
                        named.series() == Series.FRACTION && named.size().mm() == mm)
                .findFirst();
    }

    private static String withoutDrill(String name) {
        Matcher drill = DRILL.matcher(name.strip());
        return drill.matches() ? drill.group(1) : name.strip();
    }

    private static List<NamedSize> rows() {
        InputStream table = Objects.requireNonNull(
                DrillNames.class.getResourceAsStream("drill-sizes.csv"), "the jar lacks drill-sizes.csv");
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(table, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("# "))
                    .skip(1)
                    .map(DrillNames::row)
                    .toList();
        } catch (IOException unread) {
            throw new UncheckedIOException("drill-sizes.csv cannot be read", unread);
        }
    }

    private static NamedSize row(String line) {
        List<String> cells = List.of(line.split(",", -1));
        Series series = Series.valueOf(cells.get(0).toUpperCase(Locale.ROOT));
        String name = switch (series) {
            case NUMBER -> "#" + cells.get(1);
            case LETTER -> cells.get(1);
            case FRACTION -> cells.get(1) + " in";
        };
        double mm = Rational.decimal(cells.get(2)).times(Definitions.INCH).nearest();
        return new NamedSize(series, name, new Length(mm));
    }
}
