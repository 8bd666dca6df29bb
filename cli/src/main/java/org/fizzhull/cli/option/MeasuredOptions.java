package org.fizzhull.cli.option;

import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.shape.Shape;

/** The options that say what was measured on other pieces: fizz time, rise time, lift under water, result, weight. */
public final class MeasuredOptions {
    public static final String FIZZ = "--measured-fizz";
    public static final String RISE = "--measured-rise";
    public static final String LIFT = "--measured-lift";
    public static final String RESULT = "--measured-result";
    public static final String WEIGHED = "--weighed";

    /** All of them may be given once for each piece. */
    static final List<String> REPEATABLE = List.of(FIZZ, RISE, LIFT, RESULT, WEIGHED);

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
                        + " hoop that touches neither bowl nor bottom, and read after 2 to 5 s. Better: film the display and"
                        + " write down several readings of the one piece, 149 g after 2 s then 151 g after 4 s at 142 g. A"
                        + " reading above the weight before: it floats. Our own proposal, checked by simulation only. The piece and the wet floor"
                        + " are slippery; keep the scale dry and small children away from the warm water");
        CommonOptions.value(
                spec,
                RESULT,
                "RESULT",
                "what another piece did: sank at 152 g, floated at 141 g (up within 20 s) or rose at 148 g (later)");
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
        return arguments.texts(WEIGHED).isEmpty()
                ? seen
                : seen.weighedIn(question.shape().bare());
    }

    /** What was measured on pieces like that of a question: typed, of the recipe file and of the bench file. */
    public static Observations read(Arguments arguments, Question question) {
        Shape mould = question.shape().bare();
        BenchOption.asked(arguments, List.of(mould));
        Observations seen =
                BathedPieces.walk(arguments, List.of(mould), false).byMould().getOrDefault(mould, Observations.none());
        // the recipe's own weighings tell nothing new where the weight is known; typed ones are refused there
        if (!arguments.has(WEIGHED) && !arguments.has(MakingOptions.PRESS)) {
            WeighedOptions.passed(arguments, "they tell how a press answers, and this piece is not pressed");
        } else {
            Optional<WeighedPiece> weighed = WeighedOptions.weighed(arguments, question::shape);
            seen = weighed.isPresent() ? seen.weighed(weighed.get()) : seen;
        }
        return DryingLogs.and(arguments, question, seen);
    }
}
