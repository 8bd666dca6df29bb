package org.fizzhull.cli.deciding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.cli.floating.FloatSentence;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.decide.advise.Advice;
import org.fizzhull.decide.advise.Change;
import org.fizzhull.evidence.Notice;

/** The first sentences of advice: how it stands and what to do, or what to give up where no small change is enough. */
public final class AdviceSentence {
    /** A piece of less than this share of its weight is another piece, and does not hold (assumed). */
    static final double LOOSEST = 0.6;

    private AdviceSentence() {}

    /** How it stands and what to do. */
    public static String of(Advice advice) {
        String piece = NumberText.grams(advice.now().mass()) + " in "
                + ShapeWords.piece(advice.design().shape());
        String stands = piece + " floats to the end with a chance of "
                + AdviceText.chance(advice, advice.now().chance());
        return fizz(advice)
                + switch (advice.need()) {
                    case NOTHING -> "Nothing needs changing: " + stands + "; " + goal(advice) + " was asked.";
                    case A_CHANGE -> {
                        Change best = advice.best().orElseThrow();
                        yield AdviceText.capital(AdviceText.steps(best)) + ". As it is, " + stands + "; then "
                                + FloatSentence.chance(best.appraisal().chance()) + '.';
                    }
                    case A_MEASUREMENT_FIRST ->
                        "Measure first: " + stands
                                + ", and nearly all of the batch may float or nearly none, for what decides is the"
                                + " same for all of it." + sure(advice);
                    case ANOTHER_DESIGN ->
                        "No small change is enough: " + stands + ", and " + goal(advice) + " was asked. "
                                + giveUp(advice);
                };
    }

    /** What was asked, as it is said. */
    static String goal(Advice advice) {
        return FloatSentence.chance(advice.goal().chance());
    }

    /** A piece that does not fizz is told first. */
    private static String fizz(Advice advice) {
        Optional<Notice> notice = advice.design().stillWater()
                ? Optional.empty()
                : advice.effervescence().flatMap(fizz -> fizz.notice());
        return notice.isPresent() ? notice.get().text() + ' ' : "";
    }

    private static String sure(Advice advice) {
        return advice.best().isPresent()
                ? " What is enough either way: "
                        + AdviceText.steps(advice.best().get()) + '.'
                : " No small change is enough either way.";
    }

    /** What the search saw: the weight that would do, the best it found, and what would do but for a limit. */
    private static String giveUp(Advice advice) {
        List<String> ways = new ArrayList<>();
        OptionalDouble aim = advice.aim();
        if (aim.isPresent() && aim.getAsDouble() > LOOSEST * advice.now().mass()) {
            ways.add("give up weight: " + NumberText.grams(aim.getAsDouble())
                    + " in this mould would do, if it can be pressed so" + " loosely and still hold");
        }
        for (Advice.Forgone forgone : advice.forgone()) {
            ways.add("give up that " + kept(forgone.limit()) + ": then " + AdviceText.steps(forgone.change())
                    + " would do");
        }
        Optional<Change> best = advice.mostHelpful();
        if (best.isPresent()) {
            ways.add("ask for less: the best single change found is to " + AdviceText.steps(best.get())
                    + ", and reaches "
                    + AdviceText.chance(advice, best.get().appraisal().chance()));
        } else {
            ways.add("start from another mix or another shape: nothing that was tried raises the chance by 1 in 100");
        }
        return AdviceText.capital(String.join("; or ", ways)) + '.';
    }

    private static String kept(Advice.Limit limit) {
        return switch (limit) {
            case HOLDS -> "the piece holds as it comes out of the mould";
            case FRAGRANCE -> "the share of fragrance never rises (take out fragrance with it)";
            case SUPPLIER -> "an ingredient stays within the limit of the recipe";
        };
    }
}
