package org.fizzhull.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.forecast.conditioning.PressedWeightSolver;
import org.fizzhull.forecast.conditioning.TimedVoyage;
import org.fizzhull.forecast.maker.MakingPriors;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.DroppedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.recipe.Blend;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.voyage.HeldUnder;

/**
 * What the learned inputs make of one trial: its signs, each with the errors this piece has of its own (scale, size,
 * thermometer, grains, fizz left) in its deviation. The bath's models are those of a forecast ({@link DropModel}), run for one
 * piece. One instance serves one thread.
 */
final class TrialModel {
    /** Standard deviation of a rise time from the eye that calls it up, s (assumed). */
    private static final double RISE_THUMB = 4;

    /** Relative standard deviation of a rise time from the closed form of the way up (assumed). */
    private static final double RISE_SHARE = 0.05;

    /** Probability at one standard deviation above the median of a normal law. */
    private static final double ONE_SIGMA = 0.8413447460685429;

    /** Relative standard deviation of the weight that drying leaves of a fill, where none was taken in the bath (assumed). */
    private static final double DRIED_SHARE = 0.02;

    private final Trial trial;
    /** Index among the learned inputs of the size of its mould; -1 where that is this piece's own. */
    private final int mould;
    /** Signs of all parts, in order. */
    private final List<TrialResidual> signs = new ArrayList<>();

    private final List<Part> parts = new ArrayList<>();

    /**
     * Signs that share one table of inputs.
     *
     * @param inputs values of all inputs of the models, medians but for what is learned
     * @param places index in {@code inputs} of each learned input; -1 where the part does not ask for it
     * @param own indices of the inputs that are the piece's own
     * @param steps one standard deviation of each of these
     * @param signs what was seen, predicted from {@code inputs}
     */
    private record Part(double[] inputs, int[] places, int[] own, double[] steps, List<TrialResidual> signs) {}

    /** The signs of a trial of a mould that made no other, or whose size is known as well as it ever will be. */
    TrialModel(Trial trial, List<Factor> learned) {
        this(trial, learned, -1);
    }

    /**
     * The signs of a trial in the bath and, where it tells of pressing, of its fill.
     *
     * @param learned the learned inputs, the sizes of single moulds among them
     * @param mould index among them of the size of this mould; -1 for none
     */
    TrialModel(Trial trial, List<Factor> learned, int mould) {
        this.trial = trial;
        this.mould = mould;
        bathed(learned);
        if (trial.fill().isPresent()
                && trial.pressure().isPresent()
                && trial.blend().isPresent()) {
            pressed(trial.blend().get(), learned);
        }
    }

    Trial trial() {
        return trial;
    }

    List<TrialResidual> signs() {
        return signs;
    }

    /**
     * Writes the residuals of the signs.
     *
     * @param values one value of each learned input, in its own unit
     * @param into takes the residuals
     * @param from index of the first
     */
    void residuals(double[] values, double[] into, int from) {
        int at = from;
        for (Part part : parts) {
            put(part, values);
            for (TrialResidual sign : part.signs()) {
                into[at++] = sign.residual(part.inputs());
            }
        }
    }

    /** {@return what each sign was to show by one value of each learned input, in the unit of the sign} */
    double[] predicted(double[] values) {
        double[] predicted = new double[signs.size()];
        int at = 0;
        for (Part part : parts) {
            put(part, values);
            for (TrialResidual sign : part.signs()) {
                predicted[at++] = sign.predicted(part.inputs());
            }
        }
        return predicted;
    }

    /** Works the errors of the piece's own out anew, at one value of each learned input. */
    void takeOwn(double[] values) {
        for (Part part : parts) {
            put(part, values);
            for (TrialResidual sign : part.signs()) {
                sign.takeOwn(part.inputs(), part.own(), part.steps());
            }
        }
    }

    /** Writes the learned inputs into the table of a part. */
    private static void put(Part part, double[] values) {
        for (int k = 0; k < values.length; k++) {
            if (part.places()[k] >= 0) {
                part.inputs()[part.places()[k]] = values[k];
            }
        }
    }

    /** Signs in the bath: result, rise time, width, lift, fizz time. */
    private void bathed(List<Factor> learned) {
        Question question = question();
        PreparedQuestion prepared = PreparedQuestion.of(question, Factors.standard());
        DropModel drop = new DropModel(prepared);
        HeldUnder bowl = new HeldUnder(prepared.form(), question.bath());
        // deviation of the spare lift from piece to piece, kg, wider where the weight in the bath was not taken
        List<TrialResidual> found = new ArrayList<>();
        // what two pieces of one mould differ by, kg of lift
        double own = HeldPiece.ownLift(trial.shape(), trial.bath());
        double piece = trial.mass().isPresent()
                ? own
                : Math.hypot(own, DRIED_SHARE * ((Making.Weighed) question.making()).mass());
        // every trial has a result; all else where it was observed
        found.add(TrialResidual.result(trial.result() == DroppedPiece.Result.FLOATED, piece, drop::at));
        trial.roseAfter().ifPresent(up -> {
            // a later rise is a smaller lack at the start: the time's error as one of the spare
            double[] middle = prepared.factors().medians();
            drop.at(middle);
            double error = Math.hypot(RISE_THUMB, RISE_SHARE * up);
            double slope =
                    (bowl.spareLettingGo(drop.launch(), up + error) - bowl.spareLettingGo(drop.launch(), up)) / error;
            found.add(TrialResidual.value("rose_after_s", 0, Math.hypot(piece, slope * error), inputs -> {
                drop.at(inputs);
                return bowl.spareLettingGo(drop.launch(), up);
            }));
        });
        trial.left().ifPresent(wide -> {
            double up = trial.roseAfter().orElseThrow();
            found.add(TrialResidual.value("left_mm", wide, TimedPiece.WIDTH_DEVIATION, inputs -> {
                drop.at(inputs);
                return bowl.leftAcross(drop.launch(), up);
            }));
        });
        trial.lift().ifPresent(reading -> {
            double after = trial.liftAfter().orElseThrow();
            // the plume is felt with a chance q: mean of both, q (1 - q) times the square of their distance in the
            // variance
            double q = HeldPiece.PLUME_FELT;
            double[] middle = prepared.factors().medians();
            drop.at(middle);
            double apart = bowl.reading(drop.launch(), after, true) - bowl.reading(drop.launch(), after, false);
            double deviation = Math.hypot(HeldPiece.DEVIATION, Math.sqrt(q * (1 - q)) * apart);
            found.add(TrialResidual.value("lift_g", reading, Math.hypot(own, deviation), inputs -> {
                drop.at(inputs);
                return q * bowl.reading(drop.launch(), after, true)
                        + (1 - q) * bowl.reading(drop.launch(), after, false);
            }));
        });
        trial.fizzedFor().ifPresent(time -> {
            TimedVoyage voyage = new TimedVoyage(prepared, OptionalDouble.empty());
            found.add(
                    TrialResidual.value("fizz_s", time, TimedPiece.fizzed(time).deviation(), voyage::fizz));
        });
        add(prepared.factors(), learned, found);
    }

    /** Sign of the fill: the mass that this pressure gives, with the repeat of a press in its deviation. */
    private void pressed(Blend blend, List<Factor> learned) {
        double pressure = trial.pressure().orElseThrow();
        double fill = trial.fill().orElseThrow();
        // the fill as a weighed piece of this press; its size is known as the trial's
        Moulded.Pressed making = new Moulded.Pressed(
                blend, pressure, WeighedPiece.HAND, MouldDimensions.Filling.usual(trial.shape()), DryingPlan.none());
        Factors factors = PreparedQuestion.of(
                        Question.of(trial.shape(), making).measured(trial.measured()), Factors.standard())
                .factors();
        WeighedPiece piece = WeighedPiece.byHand(fill, pressure);
        PressedWeightSolver solve = new PressedWeightSolver(piece, making, trial.shape(), factors);
        double[] middle = factors.medians();
        // one press against the next, as a mass
        double again = solve.mass(middle, 0.5, ONE_SIGMA) - solve.mass(middle, 0.5, 0.5);
        double deviation = Math.hypot(piece.deviation(), again);
        add(
                factors,
                learned,
                List.of(TrialResidual.value("fill_g", fill, deviation, inputs -> solve.mass(inputs, 0.5, 0.5))));
    }

    /** Adds signs with a table of their inputs; inputs that are not learned are the piece's own, one standard deviation each. */
    private void add(Factors factors, List<Factor> learned, List<TrialResidual> found) {
        int[] places = new int[learned.size()];
        for (int k = 0; k < places.length; k++) {
            Input input = learned.get(k).input();
            places[k] = input == Input.MOULD_SIZE && k != mould ? -1 : factors.column(input);
        }
        List<Prior> priors = factors.priors();
        double[] inputs = factors.medians();
        // the size of this mould as its water tells
        int size = factors.column(Input.MOULD_SIZE);
        if (size >= 0) {
            inputs[size] = trial.sizeError();
        }
        // all inputs that are not learned are the piece's own
        List<Integer> own = new ArrayList<>();
        for (int column = 0; column < inputs.length; column++) {
            int at = column;
            if (java.util.Arrays.stream(places).noneMatch(place -> place == at)) {
                own.add(column);
            }
        }
        int[] columns = own.stream().mapToInt(Integer::intValue).toArray();
        double[] steps = own.stream()
                .mapToDouble(column -> priors.get(column).quantile(ONE_SIGMA) - inputs[column])
                .toArray();
        Part part = new Part(inputs, places, columns, steps, List.copyOf(found));
        parts.add(part);
        signs.addAll(found);
    }

    /** {@return the piece in its bath; without a weight there, that of its fill less what dries off} */
    Question question() {
        Optional<Blend> blend = trial.blend();
        double mass = trial.mass()
                .orElseGet(() -> trial.fill().orElseThrow()
                        * MakingPriors.driedPerPowder(blend.orElseThrow())
                        / (1 + blend.get().liquid().ratio()));
        return Question.of(trial.shape(), new Making.Weighed(mass, Optional.empty(), blend))
                .in(trial.bath())
                .measured(trial.measured());
    }
}
