package org.fizzhull.cli.text;

import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * The units in which a text shows masses, lengths and temperatures. The texts of the commands are written in metric units,
 * each number joined to its unit by {@link NumberText#UNIT}; here, in one place, such a pair becomes one of the other units. Of
 * all numbers that round to the one that is told, the shortest is taken: 141.7 g of a fill of 5 oz are 5 oz again, not
 * 4.998. What stands in quotes is to be typed and keeps its value to 1 in 10,000. Sentences of the library come through
 * {@link NumberText#joined}, refusals through {@link #message}. A range such as {@code 130 to 142 g} is
 * turned as a whole. Numbers that a plain space parts from their unit stay as they are. Rows and paragraphs are
 * wrapped anew.
 *
 * @param mass gram, or ounce in its place, and then pound in place of kilogram
 * @param length millimetre, or inch in its place
 * @param temperature Celsius, or Fahrenheit in its place
 */
public record ShownUnits(Unit mass, Unit length, Unit temperature) {
    /** As the texts are written. */
    public static final ShownUnits METRIC = new ShownUnits(Unit.GRAM, Unit.MILLIMETRE, Unit.CELSIUS);

    /** Ounces, inches and degrees Fahrenheit. */
    public static final ShownUnits US = new ShownUnits(Unit.OUNCE, Unit.INCH, Unit.FAHRENHEIT);

    private static final int MOST_DIGITS = 9;

    /** What is to be typed asks the same question to this share of a value. */
    private static final double TYPED = 1e-4;

    /** A size is told to this share: 0.2 % of a diameter is 0.6 % of a volume. */
    private static final double SIZE = 2e-3;

    /** A weight of whole grams is told to this share: 43 g may be 43.0 g, and is no 1.5 oz. */
    private static final double WEIGHT = 8e-3;

    private static final Pattern ARTICLE = Pattern.compile("\\b([Aa])n?(\\s+)(\\d+)(?=[ \u00A0.])");

    /** A number as the texts write it. */
    private static final String NUMBER = "\\d+(?:\\.\\d+)?";

    private static final Pattern PLAIN = Pattern.compile(NUMBER);

    /** A number and its unit in a message. */
    private static final Pattern PAIR = Pattern.compile(NUMBER + " \\w+");

    private static final Pattern BARE = Pattern.compile("[-+]?[\\d.]+");

    /** Numbers that are read with a vowel first. */
    private static final Pattern AN = Pattern.compile("8\\d*|11|18");

    /** The units in which values are written: an ounce or a pound anywhere among them makes all masses ounces. */
    public static ShownUnits of(List<String> values) {
        return new ShownUnits(
                written(values, Unit.OUNCE, Unit.POUND) ? Unit.OUNCE : Unit.GRAM,
                written(values, Unit.INCH, Unit.FOOT) ? Unit.INCH : Unit.MILLIMETRE,
                written(values, Unit.FAHRENHEIT) ? Unit.FAHRENHEIT : Unit.CELSIUS);
    }

    /** Whether one of the units stands behind a number in one of the values. */
    private static boolean written(List<String> values, Unit... units) {
        for (String value : values) {
            for (int at = 1; at < value.length(); at++) {
                char before = value.charAt(at - 1);
                int from = value.charAt(at) == ' ' ? at + 1 : at;
                if ((Character.isDigit(before) || before == '.' || before > '~') && starts(value, from, units)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean starts(String value, int from, Unit... units) {
        for (Unit unit : units) {
            for (String name : unit.names()) {
                int end = from + name.length();
                if (value.startsWith(name, from) && (end == value.length() || !Character.isLetter(value.charAt(end)))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** A text in these units, with plain spaces. */
    public String in(String text) {
        return Table.plain(shown(text));
    }

    /** The same for a page, where a number stays beside its unit; what is to be typed has plain spaces. */
    public String onPage(String text) {
        return text.indexOf('"') < 0 ? shown(text).replace(Table.SOFT, '\n') : in(text);
    }

    private String shown(String text) {
        if (metric()) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length() + 64);
        int from = 0;
        for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', from)) {
            out.append(Table.reworded(text.substring(from, end), this::turned)).append('\n');
            from = end + 1;
        }
        return out.append(Table.reworded(text.substring(from), this::turned)).toString();
    }

    /**
     * The message of a refusal in these units. What was typed stands as it was typed, and so does all of a message about a
     * number without a unit.
     *
     * @param typed the words of the command line
     */
    public String message(Refusal refusal, List<String> typed) {
        String message = Objects.requireNonNull(refusal.getMessage());
        if (metric() || BARE.matcher(refusal.read()).matches()) {
            return message;
        }
        return NumberText.plain(turned(PAIR.matcher(message).replaceAll(pair -> {
            boolean own = typed.stream().anyMatch(word -> word.contains(pair.group()));
            return own ? pair.group() : NumberText.joined(pair.group());
        })));
    }

    // not equals: that of a record is spun up at its first call, which costs a short command a tenth of its time
    private boolean metric() {
        return mass == Unit.GRAM && length == Unit.MILLIMETRE && temperature == Unit.CELSIUS;
    }

    private String turned(String text) {
        StringBuilder out = new StringBuilder(text.length() + 64);
        int done = 0;
        for (int at = text.indexOf(NumberText.UNIT); at >= 0; at = text.indexOf(NumberText.UNIT, at + 1)) {
            int end = at + 1;
            while (end < text.length() && (Character.isLetterOrDigit(text.charAt(end)) || text.charAt(end) == '/')) {
                end++;
            }
            Unit from = metric(text.substring(at + 1, end));
            Unit to = from == null ? null : shown(from);
            int start = number(text, at);
            if (from == null || to == null || start < done || start == at) {
                continue;
            }
            int first = range(text, start, done);
            boolean typed = quoted(text, start);
            out.append(text, done, first);
            if (first < start) {
                int stop = numberEnd(text, first);
                out.append(turned(text.substring(first, stop), from, to, typed)).append(text, stop, start);
            }
            out.append(turned(text.substring(start, at), from, to, typed))
                    .append(NumberText.UNIT)
                    .append(to.symbol());
            done = end;
        }
        return articles(out.append(text, done, text.length()).toString());
    }

    /** Whether a place stands between quotes of its row or paragraph. */
    private static boolean quoted(String text, int place) {
        boolean quoted = false;
        for (int at = place - 1; at >= 0; at--) {
            quoted ^= text.charAt(at) == '"';
        }
        return quoted;
    }

    /** A turned number may begin with another sound: an 80 mm dome is a 3.15 in dome. */
    private static String articles(String text) {
        return ARTICLE.matcher(text)
                .replaceAll(found -> found.group(1)
                        + (AN.matcher(found.group(3)).matches() ? "n" : "")
                        + found.group(2)
                        + found.group(3));
    }

    private static @Nullable Unit metric(String symbol) {
        return switch (symbol) {
            case "g" -> Unit.GRAM;
            case "kg" -> Unit.KILOGRAM;
            case "mm" -> Unit.MILLIMETRE;
            case "cm" -> Unit.CENTIMETRE;
            case "C" -> Unit.CELSIUS;
            default -> null;
        };
    }

    /** The unit in place of the metric ones; null where those stay. */
    private @Nullable Unit shown(Unit from) {
        return switch (from.dimension()) {
            case MASS -> mass == Unit.GRAM ? null : from == Unit.KILOGRAM ? Unit.POUND : mass;
            case LENGTH -> length == Unit.MILLIMETRE ? null : length;
            case TEMPERATURE -> temperature == Unit.CELSIUS ? null : temperature;
            default -> null;
        };
    }

    /** Where the number that ends here begins; the place itself where there is none. */
    private static int number(String text, int end) {
        int at = end;
        while (at > 0 && (Character.isDigit(text.charAt(at - 1)) || text.charAt(at - 1) == '.')) {
            at--;
        }
        if (!PLAIN.matcher(text.substring(at, end)).matches()) {
            return end; // what a person typed, such as 77.1.50
        }
        boolean sign =
                at > 0 && at < end && text.charAt(at - 1) == '-' && (at == 1 || " (".indexOf(text.charAt(at - 2)) >= 0);
        return sign ? at - 1 : at;
    }

    private static int numberEnd(String text, int from) {
        int at = from + 1;
        while (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.') {
            at++;
        }
        return at;
    }

    /** Where a range {@code 130 to 142} begins that ends with the number here; that number's place where it is alone. */
    private static int range(String text, int start, int least) {
        String to = " to ";
        int gap = start - to.length();
        if (gap <= least || !text.startsWith(to, gap)) {
            return start;
        }
        int first = number(text, gap);
        return first < gap && first >= least ? first : start;
    }

    private static String turned(String number, Unit from, Unit to, boolean typed) {
        double value = Double.parseDouble(number);
        double middle = to.fromSi(from.toSi(value));
        if (to == Unit.FAHRENHEIT) {
            return Decimals.text(Math.rint(10 * middle) / 10, 5);
        }
        int point = number.indexOf('.');
        int decimals = point < 0 ? 0 : number.length() - point - 1;
        double half = 0.5 * Math.pow(10, -decimals);
        double share = typed ? TYPED : to == Unit.INCH ? SIZE : decimals == 0 ? WEIGHT : 1;
        half = Math.min(half, share * Math.abs(value));
        double off = to.fromSi(from.toSi(value + half)) - middle;
        for (double tens = 1; tens < 1e9; tens *= 10) {
            double shorter = Math.rint(middle * tens) / tens;
            if (Math.abs(shorter - middle) <= off) {
                return Decimals.text(shorter, MOST_DIGITS);
            }
        }
        return Decimals.text(middle, MOST_DIGITS);
    }
}
