package org.fizzhull.forecast.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.Predictor;
import org.fizzhull.forecast.attitude.FloatingAttitudes;
import org.fizzhull.forecast.conditioning.CommonPosterior;
import org.fizzhull.forecast.limit.PieceLimits;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.model.OutcomeStatistics;
import org.fizzhull.forecast.model.TippingBoat;
import org.fizzhull.forecast.model.VoyageModel;
import org.fizzhull.forecast.notice.Notices;
import org.fizzhull.forecast.prepared.CommonColumns;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.Draws;
import org.fizzhull.uncertainty.sampling.MonteCarlo;

/**
 * Answers several questions in the same states of the world: draw i of one answer and draw i of another share
 * everything that is uncertain and common to both, so that their difference is known far better than either (common
 * random numbers; Glasserman and Yao (1992), Management Science 38, 884, from memory).
 *
 * <p>Shared too is the error of a mould's size: two moulds are compared as if measured with the same ruler, unless something
 * was measured on pieces of one of them ({@link Observations.MeasuredPieces}). Cost: a
 * draw of a question is pressed and dried once, however many baths it goes into. Immutable; safe to share between
 * threads; the answer does not depend on the workers.
 */
public final class JointPredictor extends Predictor<JointPredictor> {
    private final List<Observations.MeasuredPieces> measured;

    private JointPredictor(
            Factors factors, Sampling sampling, Workers workers, List<Observations.MeasuredPieces> measured) {
        super(factors, sampling, workers);
        Given.all("measured", measured);
        this.measured = List.copyOf(measured);
    }

    @Override
    protected JointPredictor drawing(Factors others, Sampling other, Workers by) {
        return new JointPredictor(others, other, by, measured);
    }

    /** {@return the default priors, 4,096 draws from seed 1, on the calling thread} */
    public static JointPredictor standard() {
        return new JointPredictor(Factors.standard(), Sampling.standard(), Workers.CALLER, List.of());
    }

    /**
     * {@return this predictor with other draws}
     *
     * @param other number of draws, at least one, and seed
     * @throws Refusal {@code out-of-range} for none, since what is compared are chances
     */
    @Override
    public JointPredictor with(Sampling other) {
        if (other.samples() == 0) {
            throw new Refusal(
                    "out-of-range",
                    "samples",
                    "0",
                    "a multiple of " + MonteCarlo.STEP,
                    "Chances are compared, and central values have none.");
        }
        return super.with(other);
    }

    /**
     * {@return this predictor knowing what was measured on pieces of some questions} Every answer is narrower by what the
     * measurements say of the inputs that it shares with them. The error of a mould's size is then each mould's own.
     *
     * @param pieces what was measured, those on pieces of one question together
     */
    public JointPredictor with(List<Observations.MeasuredPieces> pieces) {
        return new JointPredictor(factors, sampling, workers, pieces);
    }

    /** {@return how it draws} */
    public Sampling sampling() {
        return sampling;
    }

    /**
     * {@return the answers in the order of the questions, all at once}
     *
     * @param questions what is asked, at least one
     * @param baths that each piece goes into in place of its question's own; none for that one alone
     * @param progress told before each question and after the last; may stop the run
     * @throws CancellationException where it does
     * @throws Refusal for more uncertain inputs than there are columns, or a fill that its mould cannot hold
     */
    public List<JointForecast> forecast(List<Question> questions, List<Bath> baths, Workers.Progress progress) {
        List<JointForecast> answers = new ArrayList<>(questions.size());
        forecast(questions, baths, progress, answers::add);
        return answers;
    }

    /**
     * One answer after the other, in the order of the questions. An answer holds some 100 bytes per draw and bath: a
     * reader of a long table keeps what it needs of each.
     *
     * @param questions at least one
     * @param baths that each piece goes into in place of its question's own; none for that one alone
     * @param progress told before each question and after the last
     * @param reader takes each answer
     * @throws CancellationException where {@code progress} stops the run
     * @throws Refusal for more uncertain inputs than there are columns, or a fill that its mould cannot hold
     */
    public void forecast(
            List<Question> questions, List<Bath> baths, Workers.Progress progress, Consumer<JointForecast> reader) {
        List<Question> all = new ArrayList<>(questions);
        measured.forEach(pieces -> all.add(pieces.like()));
        all.forEach(question -> PieceLimits.checkPiece(question.shape(), question.making()));
        CommonColumns common = new CommonColumns(all, factors, !measured.isEmpty());
        Optional<CommonPosterior> known =
                measured.isEmpty() ? Optional.empty() : Optional.of(known(common, questions.size()));
        Draws run = known.isPresent()
                ? known.get().draws()
                : new MonteCarlo(common.uniforms(), sampling.samples(), sampling.seed(), workers);
        for (int i = 0; i < questions.size(); i++) {
            check(progress, i, questions.size());
            reader.accept(answer(questions.get(i), baths, common.places(i), run, known));
        }
        check(progress, questions.size(), questions.size());
    }

    /** Tells how far the run is; throws where it is to stop. */
    private static void check(Workers.Progress progress, int done, int all) {
        if (!progress.goesOn(done, all)) {
            throw new CancellationException("stopped after " + done + " of " + all);
        }
    }

    /** The common draws after all measurements; {@code first} is the number of the first measured question among the columns. */
    private CommonPosterior known(CommonColumns common, int first) {
        List<PreparedQuestion> prepared = new ArrayList<>();
        for (Observations.MeasuredPieces pieces : measured) {
            prepared.add(PreparedQuestion.of(TippingBoat.judged(pieces.like(), factors), factors));
        }
        List<Observations> seen =
                measured.stream().map(Observations.MeasuredPieces::seen).toList();
        return CommonPosterior.of(common, first, prepared, seen, sampling, workers);
    }

    /** The answer to a question in each bath; {@code places} says where its columns stand among the common ones. */
    private JointForecast answer(
            Question put, List<Bath> baths, int[] places, Draws run, Optional<CommonPosterior> known) {
        List<PreparedQuestion> prepared = new ArrayList<>();
        for (Bath bath : baths.isEmpty() ? List.of(put.bath()) : baths) {
            prepared.add(prepared(put.in(bath), prepared));
        }
        // one run of draws for all baths: each piece is made once
        double[][][] columns = new double[prepared.size()][VoyageModel.CRITICAL_WIDTH][sampling.samples()];
        double[][] making = new double[JointModel.MAKING_WIDTH][sampling.samples()];
        run.draws(() -> new JointModel(prepared, places, columns, making));
        // the answer: what belongs to the making by the first bath, then each bath
        PreparedQuestion first = prepared.get(0);
        double[] centre = known.isPresent()
                ? known.get().centre(first, places)
                : first.factors().medians();
        Piece piece = piece(first, centre, columns[0][VoyageModel.MASS]);
        List<OutcomeByDraw> each = new ArrayList<>();
        List<Notice> notices = new ArrayList<>(Notices.of(first.question(), piece));
        for (int i = 0; i < columns.length; i++) {
            each.add(OutcomeByDraw.of(prepared.get(i), columns[i]));
        }
        if (first.question().into() != put.into()) {
            notices.add(TippingBoat.NOTICE);
        }
        known.ifPresent(measurements -> notices.addAll(measurements.notices()));
        notices.addAll(Notices.critical(each.get(0).critical()));
        return new JointForecast(
                first.question(),
                piece,
                FloatingAttitudes.of(first.question(), piece),
                columns[0][VoyageModel.MASS],
                making,
                each,
                notices);
    }

    /** By the central values; of a made piece with the weight of the middle draw, as a forecast of it alone has it. */
    private static Piece piece(PreparedQuestion prepared, double[] centre, double[] masses) {
        DropModel drop = new DropModel(prepared);
        return prepared.question().making() instanceof Making.Weighed
                ? drop.piece(centre)
                : drop.piece(centre, OutcomeStatistics.intervalOf(masses).median());
    }

    /** A question in a bath; the form of an earlier bath serves again where the piece goes in the same way. */
    private PreparedQuestion prepared(Question put, List<PreparedQuestion> earlier) {
        Question question = TippingBoat.judged(put, factors);
        for (PreparedQuestion other : earlier) {
            if (other.question().into() == question.into()) {
                return other.ask(question);
            }
        }
        return PreparedQuestion.of(question, factors);
    }
}
