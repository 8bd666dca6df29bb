package org.fizzhull.decide.compare;

import java.util.Arrays;
import java.util.List;
import org.fizzhull.decide.MadePiece;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.joint.JointForecast;
import org.fizzhull.forecast.joint.OutcomeByDraw;

/**
 * What a comparison keeps of the forecast of one candidate: its numbers, and the draws by which rows are compared. The draws of
 * the worst bath count. Arrays have one element a draw and are not copied.
 */
final class RowDraws {
    private final Comparison.Candidate candidate;
    private final MadePiece made;
    private final ComparedPiece.InBath bathed;
    private final List<Notice> notices;
    /** Share of the pieces that floats to the end, 0 to 1, by draw. */
    private final double[] shares;
    /** How much heavier the piece could be and still float, as a share of its weight, by draw. */
    private final double[] headroom;
    /** Time until 1 % is left, s, by draw. */
    private final double[] fizzTimes;
    /** Time until dry, s from pressing, by draw. */
    private final double[] readyTimes;

    /** Takes from a forecast what the comparison needs. */
    RowDraws(Comparison.Candidate candidate, JointForecast answer, List<Comparison.NamedBath> panel) {
        this.candidate = candidate;
        // the piece, then what the bath makes of it; without a recipe it is taken to fizz
        made = MadePieces.of(answer);
        bathed = ComparedPiece.InBath.of(
                answer, panel, made.effervescence().map(Effervescence::fizzes).orElse(true));
        notices = answer.notices();
        // rows are compared in the bath that each does worst in
        OutcomeByDraw worst = answer.baths().get(ComparedPiece.InBath.worst(answer));
        shares = worst.shares();
        headroom = worst.headroom();
        fizzTimes = worst.fizzTimes();
        readyTimes = answer.readyTimes();
    }

    /** Share of the pieces that floats to the end, by draw. */
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

    /** {@return the value by which the table is sorted, the more the better; negative infinity where it is not known} */
    double merit(Comparison.SortBy sort) {
        return switch (sort) {
            case FLOAT -> floats();
            case FIZZ -> bathed.fizzTime().map(time -> time.median()).orElse(Double.NEGATIVE_INFINITY);
            case DRY -> made.ready().map(time -> -time.median()).orElse(Double.NEGATIVE_INFINITY);
            case COST -> made.costEach().isPresent() ? -made.costEach().getAsDouble() : Double.NEGATIVE_INFINITY;
        };
    }

    /** {@return the same by draw; for floating, how much heavier the piece could be, which also tells sure rows apart} */
    double[] merits(Comparison.SortBy sort) {
        return switch (sort) {
            case FLOAT -> headroom;
            case FIZZ -> bathed.fizzTime().isPresent() ? fizzTimes : new double[fizzTimes.length];
            case DRY -> negative(readyTimes);
            case COST -> constant(merit(sort));
        };
    }

    /** The values with their sign changed. */
    private static double[] negative(double[] values) {
        double[] negative = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            negative[i] = -values[i];
        }
        return negative;
    }

    /** One value for every draw. */
    private double[] constant(double value) {
        double[] values = new double[shares.length];
        Arrays.fill(values, value);
        return values;
    }

    /** The row of the table, with the rank that was found and the notices that are its own. */
    ComparedPiece row(ComparedPiece.Rank standing, List<Notice> own) {
        return new ComparedPiece(candidate, made, bathed, standing, own);
    }
}
