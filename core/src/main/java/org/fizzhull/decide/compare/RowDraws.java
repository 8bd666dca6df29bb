package org.fizzhull.decide.compare;

import java.util.Arrays;
import java.util.List;
import org.fizzhull.decide.MadePiece;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.Effervescence;
import org.fizzhull.forecast.joint.InBath;
import org.fizzhull.forecast.joint.JointForecast;

/** What a comparison keeps of the answer for one candidate: its numbers, and the draws that rows are compared by. */
final class RowDraws {
    private final Candidate candidate;
    private final MadePiece made;
    private final BathedPiece bathed;
    private final List<Notice> notices;
    private final double[] shares;
    private final double[] headroom;
    private final double[] fizzTimes;
    private final double[] readyTimes;

    RowDraws(Candidate candidate, JointForecast answer, List<NamedBath> panel) {
        this.candidate = candidate;
        made = MadePiece.of(answer);
        bathed = BathedPiece.of(
                answer, panel, made.effervescence().map(Effervescence::fizzes).orElse(true));
        notices = answer.notices();
        InBath worst = answer.baths().get(BathedPiece.worst(answer));
        shares = worst.shares();
        headroom = worst.headroom();
        fizzTimes = worst.fizzTimes();
        readyTimes = answer.readyTimes();
    }

    /** Share that floats to the end, draw by draw. */
    double[] shares() {
        return shares;
    }

    /** Chance to float to the end. */
    double floats() {
        return bathed.probability().floatsToTheEnd();
    }

    List<Notice> notices() {
        return notices;
    }

    /** What it is sorted by, the more the better; where that is not known, less than anything. */
    double merit(SortBy sort) {
        return switch (sort) {
            case FLOAT -> floats();
            case FIZZ -> bathed.fizzTime().map(time -> time.median()).orElse(Double.NEGATIVE_INFINITY);
            case DRY -> made.ready().map(time -> -time.median()).orElse(Double.NEGATIVE_INFINITY);
            case COST -> made.costEach().isPresent() ? -made.costEach().getAsDouble() : Double.NEGATIVE_INFINITY;
        };
    }

    /** The same draw by draw, the more the better; of floating, how much heavier it could be. */
    double[] merits(SortBy sort) {
        return switch (sort) {
            case FLOAT -> headroom;
            case FIZZ -> bathed.fizzTime().isPresent() ? fizzTimes : new double[fizzTimes.length];
            case DRY -> negative(readyTimes);
            case COST -> constant(merit(sort));
        };
    }

    private static double[] negative(double[] values) {
        double[] negative = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            negative[i] = -values[i];
        }
        return negative;
    }

    private double[] constant(double value) {
        double[] values = new double[shares.length];
        Arrays.fill(values, value);
        return values;
    }

    ComparedPiece row(Standing standing, List<Notice> own) {
        return new ComparedPiece(candidate, made, bathed, standing, own);
    }
}
