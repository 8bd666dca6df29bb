package org.fizzhull.cli.option;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.file.BenchFile;
import org.fizzhull.cli.file.RecipeFile;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.pressing.PressWord;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;

/** The options that say what was measured on other pieces: fizz time, rise time, lift under water, weight. */
public final class MeasuredOptions {
    public static final String FIZZ = "--measured-fizz";
    public static final String RISE = "--measured-rise";
    public static final String LIFT = "--measured-lift";
    public static final String WEIGHED = "--weighed";

    /** Those of a piece in the bath. */
    public static final List<String> BATHED = List.of(FIZZ, RISE, LIFT);

    /** All of them may be given once for each piece. */
    static final List<String> REPEATABLE = List.of(FIZZ, RISE, LIFT, WEIGHED);

    private static final Allowed TIME = Allowed.aboveUpTo(0, 24, Unit.HOUR);
    private static final Allowed WIDTH = Allowed.aboveUpTo(0, 1000, Unit.MILLIMETRE);
    private static final Allowed SOON = Allowed.aboveUpTo(0, 30, Unit.SECOND);
    private static final String AFTER = " after ";
    private static final String LEFT = "left";
    private static final Allowed MASS = Allowed.above(0, Unit.GRAM);
    private static final String AT = " at ";
    public static final String IN = " in ";

    private MeasuredOptions() {}

    /** The times of a command that asks the bath. */
    public static void addTimes(Options spec) {
        CommonOptions.value(spec, FIZZ, "TIME", "your stopwatch: 4 min 10 s until gone, or 4 min at 150 g");
        CommonOptions.value(
                spec,
                RISE,
                "TIME",
                "your stopwatch: 95 s until a sunk piece was up, or 95 s at 150 g, 40 mm left (how wide it was then)");
        CommonOptions.value(
                spec,
                LIFT,
                "READING",
                "your scale: 151 g after 5 s, or 151 g after 5 s at 142 g (its weight before). Set a bowl of water as warm as"
                        + " the bath on the scale and tare it. Weigh the dry piece, then hold it wholly under with a wire"
                        + " hoop that touches neither bowl nor bottom, and read after 2 to 5 s. A reading above the weight"
                        + " before: it floats. Our own proposal, checked by simulation only. The piece and the wet floor"
                        + " are slippery; keep the scale dry and small children away from the warm water");
    }

    /** The weighed piece of a command that presses. */
    public static void addWeighed(Options spec) {
        CommonOptions.value(
                spec, WEIGHED, "PIECE", "damp pressed pieces, commas between: 146 g at firm, 99 g at 12 kg in SHAPE");
    }

    /**
     * What was measured on pieces like that of a question, for a piece of another mould: a weight that was typed without a
     * mould is of the mould of the question.
     */
    public static Observations elsewhere(Arguments arguments, Question question) {
        Observations seen = read(arguments, question);
        if (seen.weighed().isEmpty() || arguments.texts(WEIGHED).isEmpty()) {
            return seen;
        }
        Shape mould = question.shape().bare();
        List<WeighedPiece> pieces = new ArrayList<>();
        seen.eachWeighed(piece -> pieces.add(piece.shape().isPresent() ? piece : piece.in(mould)));
        WeighedPiece first = pieces.get(0).and(pieces.subList(1, pieces.size()));
        return new Observations(seen.fizz(), seen.rise(), Optional.of(first), seen.lift());
    }

    /** What was measured on pieces like that of a question. */
    public static Observations read(Arguments arguments, Question question) {
        // the recipe's own weighings tell nothing new where the weight is known; typed ones are refused there
        boolean pressed = arguments.has(WEIGHED) || arguments.has(MakingOptions.PRESS);
        Optional<WeighedPiece> weighed = pressed ? weighed(arguments) : Optional.empty();
        Observations seen = Observations.none();
        if (question.stillWater()) {
            for (String option : BATHED) {
                stirs(option, arguments.texts(option));
            }
        }
        if (weighed.isPresent()) {
            seen = seen.weighed(weighed.get());
        }
        for (String option : BATHED) {
            for (String text : arguments.texts(option)) {
                seen = bathed(seen, option, text);
            }
            if (!question.stillWater() && arguments.knows(option)) {
                seen = ofBench(arguments, question, option, seen);
            }
        }
        return seen;
    }

    /** And what was read of one piece in the bath. */
    public static Observations bathed(Observations seen, String option, String text) {
        return switch (option) {
            case FIZZ -> seen.fizzed(timed(FIZZ, text, false));
            case RISE -> seen.rose(timed(RISE, text, true));
            default -> seen.held(held(text));
        };
    }

    /** The option that takes what stands under a key of a bench file. */
    public static String option(String key) {
        return switch (key) {
            case BenchFile.FIZZ_TIMES -> FIZZ;
            case BenchFile.RISE_TIMES -> RISE;
            default -> LIFT;
        };
    }

    /** What the bench file has of the same kind, of pieces of this mould or of no mould in particular. */
    private static Observations ofBench(Arguments arguments, Question question, String option, Observations typed) {
        Observations seen = typed;
        for (BenchFile.Measured measured : BenchOption.of(arguments).measured()) {
            if (option(measured.key()).equals(option)) {
                String text = measured.piece().text();
                try {
                    Optional<Shape> mould = mould(arguments, text);
                    if (mould.isEmpty() || mould.get().equals(question.shape())) {
                        seen = bathed(seen, option, text.substring(0, mouldAt(text)));
                    }
                } catch (Refusal refusal) {
                    throw measured.here(refusal);
                }
            }
        }
        return seen;
    }

    /** Where {@code in SHAPE} begins behind a piece, as in {@code 95 s at 150 g in sphere(diameter=65 mm)}; its end where it names no shape. */
    public static int mouldAt(String text) {
        int bracket = text.indexOf('(');
        int in = bracket < 0 ? -1 : text.lastIndexOf(IN, bracket);
        return in < 0 ? text.length() : in;
    }

    private static Optional<Shape> mould(Arguments arguments, String text) {
        int in = mouldAt(text);
        return in == text.length()
                ? Optional.empty()
                : Optional.of(
                        ShapeText.read(text.substring(in + IN.length()).trim(), new OpenedFiles(arguments.files())));
    }

    private static void stirs(String option, List<String> texts) {
        if (!texts.isEmpty()) {
            throw new Refusal(
                    "conflict",
                    option,
                    texts.get(0) + " and " + QuestionOptions.NO_FIZZ,
                    "one of the two",
                    "Still water neither fizzes nor lifts a sunk piece: leave one of them away.");
        }
    }

    /** {@code 151 g after 5 s at 142 g}. */
    private static HeldPiece held(String text) {
        int after = text.indexOf(AFTER);
        if (after < 0) {
            throw new Refusal(
                    "missing-value",
                    LIFT,
                    text,
                    "a reading and its time, such as 151 g after 5 s",
                    "Say how long the piece was under when you read the scale; 2 to 5 s say most.");
        }
        String rest = text.substring(after + AFTER.length());
        int at = rest.indexOf(AT);
        Amount reading = MASS.parse(LIFT, text.substring(0, after));
        double seconds = SOON.parseExact(LIFT, at < 0 ? rest : rest.substring(0, at));
        HeldPiece piece = HeldPiece.of(reading.value(), seconds);
        if (!reading.isExact()) {
            piece = piece.within(reading.standardDeviation());
        }
        return at < 0 ? piece : piece.weighing(MASS.parseExact(LIFT, rest.substring(at + AT.length())));
    }

    private static TimedPiece timed(String option, String text, boolean rise) {
        int comma = rise ? text.indexOf(',') : -1;
        if (comma >= 0) {
            return timed(option, text.substring(0, comma), true)
                    .leaving(left(option, text.substring(comma + 1).trim()));
        }
        int at = text.indexOf(AT);
        Amount time = TIME.parse(option, at < 0 ? text : text.substring(0, at));
        TimedPiece piece;
        try {
            piece = rise ? TimedPiece.rose(time.value()) : TimedPiece.fizzed(time.value());
        } catch (Refusal refusal) {
            throw refusal.of(option);
        }
        if (!time.isExact()) {
            piece = piece.within(time.standardDeviation());
        }
        return at < 0 ? piece : piece.weighing(MASS.parseExact(option, text.substring(at + AT.length())));
    }

    /** {@code 40 mm left}, the last word left away or not. */
    private static double left(String option, String text) {
        String size = text.endsWith(LEFT)
                ? text.substring(0, text.length() - LEFT.length()).trim()
                : text;
        return WIDTH.parseExact(option, size);
    }

    /** The weighed pieces: those of the option, or else those of recipe and bench; the first with the others behind it. */
    public static Optional<WeighedPiece> weighed(Arguments arguments) {
        List<WeighedPiece> pieces = typed(arguments);
        if (arguments.texts(WEIGHED).isEmpty()) {
            arguments.text(MakingOptions.RECIPE).ifPresent(file -> pieces.addAll(ofRecipe(arguments, file)));
            pieces.addAll(written(arguments, BenchOption.of(arguments).weighed()));
        }
        return together(pieces);
    }

    /** The pieces that a recipe file has of its mix; the first with the others behind it. */
    public static Optional<WeighedPiece> weighed(Arguments arguments, String recipe) {
        return together(ofRecipe(arguments, recipe));
    }

    private static Optional<WeighedPiece> together(List<WeighedPiece> pieces) {
        return pieces.isEmpty() ? Optional.empty() : Optional.of(pieces.get(0).and(pieces.subList(1, pieces.size())));
    }

    private static List<WeighedPiece> typed(Arguments arguments) {
        List<WeighedPiece> pieces = new ArrayList<>();
        for (String texts : arguments.texts(WEIGHED)) {
            for (String text : apart(texts)) {
                pieces.add(piece(arguments, text));
            }
        }
        return pieces;
    }

    private static List<WeighedPiece> ofRecipe(Arguments arguments, String file) {
        return written(arguments, MakingOptions.read(arguments, file).weighed());
    }

    private static List<WeighedPiece> written(Arguments arguments, List<RecipeFile.Weighed> lines) {
        List<WeighedPiece> pieces = new ArrayList<>();
        for (RecipeFile.Weighed weighed : lines) {
            try {
                pieces.add(piece(arguments, weighed.text()));
            } catch (Refusal refusal) {
                throw refusal.of("weighed").at(weighed.file(), weighed.line());
            }
        }
        return pieces;
    }

    /** Weighed pieces as typed, each with how it was pressed and, where one is given, its mould, if it does not say so itself. */
    public static String told(String texts, String press, Optional<String> mould) {
        List<String> told = new ArrayList<>();
        for (String text : apart(texts)) {
            int in = mouldAt(text);
            String front = text.substring(0, in);
            String pressed = front.contains(AT) ? front : front + AT + press;
            String from = in == text.length() ? mould.map(shape -> IN + shape).orElse("") : text.substring(in);
            told.add(pressed + from);
        }
        return String.join(", ", told);
    }

    /** Pieces between commas; a comma inside brackets or in front of a press belongs to its piece. */
    private static List<String> apart(String text) {
        List<String> pieces = new ArrayList<>();
        int depth = 0;
        int from = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (c == ',' && depth == 0) {
                pieces.add(text.substring(from, i).strip());
                from = i + 1;
            }
        }
        pieces.add(text.substring(from).strip());
        return pieces;
    }

    /** {@code 146 g at firm in dome(diameter=80 mm)}; without a press that of the piece asked about. */
    private static WeighedPiece piece(Arguments arguments, String text) {
        String front = text.substring(0, mouldAt(text));
        int at = front.indexOf(AT);
        Amount mass = MASS.parse(WEIGHED, at < 0 ? front : front.substring(0, at));
        Optional<String> press = at < 0
                ? arguments.text(MakingOptions.PRESS)
                : Optional.of(front.substring(at + AT.length()).trim());
        Optional<Shape> mould = mould(arguments, text);
        WeighedPiece piece = pressed(
                arguments,
                mould,
                mass.value(),
                press.orElseThrow(() -> new Refusal(
                        "missing-value",
                        WEIGHED,
                        text,
                        "a weight and how hard it was pressed, such as 146 g at firm",
                        "Say light, firm, hard or the weight you lean on it, such as 12 kg, behind at.")));
        if (!mass.isExact()) {
            piece = piece.within(mass.standardDeviation());
        }
        return mould.isPresent() ? piece.in(mould.get()) : piece;
    }

    private static WeighedPiece pressed(Arguments arguments, Optional<Shape> mould, double mass, String press) {
        if (!press.isEmpty() && Character.isLetter(press.charAt(0))) {
            return WeighedPiece.byHand(mass, word(press).pressure());
        }
        Amount how = MakingOptions.howHard(WEIGHED, press);
        double pressure = how.dimension() == Dimension.PRESSURE
                ? how.value()
                : MakingOptions.pascals(WEIGHED, press, how, mould.orElseGet(() -> QuestionOptions.shape(arguments)));
        return WeighedPiece.byGauge(mass, pressure, MakingOptions.factor(how));
    }

    private static PressWord word(String text) {
        try {
            return PressWord.named(text);
        } catch (Refusal refusal) {
            throw refusal.of(WEIGHED);
        }
    }
}
