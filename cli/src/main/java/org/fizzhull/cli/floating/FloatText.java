package org.fizzhull.cli.floating;

import java.util.List;
import java.util.Optional;
import org.fizzhull.answer.FloatAnswer;
import org.fizzhull.answer.tree.AnswerBody;
import org.fizzhull.cli.text.Answer;
import org.fizzhull.cli.text.NoticeText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.Table;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.Effervescence;
import org.fizzhull.forecast.Driver;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.GoverningLimit;
import org.fizzhull.forecast.making.FilledMould;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.model.BatchAim;
import org.fizzhull.forecast.model.CriticalWeights;
import org.fizzhull.forecast.question.Question;

/**
 * A forecast in a maker's words: the answer, why, what decides it, the caution.
 *
 * @param forecast the answer
 * @param asked the command that was typed, to which an option may be added
 */
public record FloatText(Forecast forecast, String asked) implements Answer {
    /** Of more draws than this it is told: that the median is the end of the range, or that lighter pieces sink too. */
    private static final double MOST = 0.5;

    private static final String CAUTION = "Floating is not a sign that a piece is dry or safe.";

    /** Drivers below this share are not worth a maker's time. */
    private static final double WORTH_NAMING = 0.05;

    private static final int MOST_DRIVERS = 4;

    @Override
    public String brief() {
        return Table.paragraph(sentence(forecast)) + Table.paragraph("Caution: " + CAUTION);
    }

    @Override
    public String whole() {
        StringBuilder out = new StringBuilder();
        out.append(Table.paragraph(sentence(forecast)))
                .append(next())
                .append('\n')
                .append(table(forecast));
        out.append('\n')
                .append(NoticeText.told(
                        forecast.notices(), forecast.effervescence().flatMap(Effervescence::notice)));
        return out.append(Table.paragraph("Caution: " + CAUTION)).toString();
    }

    @Override
    public String behind() {
        return ExplainText.of(forecast) + NoticeText.paragraphs(forecast.notices(), Notice.Kind.REMARK);
    }

    @Override
    public AnswerBody body() {
        return new FloatAnswer(forecast, NextText.words(asked));
    }

    @Override
    public List<Notice> aside() {
        return forecast.notices();
    }

    /** The answer in its first sentences. */
    public static String sentence(Forecast forecast) {
        return FloatSentence.of(forecast);
    }

    /** What to measure next, as a sentence; empty where nothing would tell much and the answer is settled. */
    private String next() {
        if (forecast.next().isEmpty()) {
            return NextText.trial(forecast).map(Table::paragraph).orElse("");
        }
        MeasureNext next = forecast.next().get();
        return Table.paragraph("To know better: " + NextText.what(next, forecast) + ", and type the same with   "
                + NextText.option(next) + "   (" + NextText.worth(next) + ").");
    }

    private static Table table(Forecast forecast) {
        Question question = forecast.question();
        Table table = new Table();
        String water = NumberText.celsius(question.bath().temperature()) + " water";
        table.row(
                "float limit",
                FloatSentence.grams(forecast, forecast.limitMass()) + " in " + water + ", without clinging gas"
                        + loaded(question) + flooded(question));
        if (forecast.boatLimitMass().isPresent()) {
            String limit =
                    FloatSentence.grams(forecast, forecast.boatLimitMass().getAsDouble());
            table.row("rim limit", limit + ": heavier, and the rim goes under");
        }
        if (forecast.mass().isPresent() && forecast.probability().isPresent()) {
            Interval mass = forecast.mass().get();
            table.row(
                    "weight",
                    FloatSentence.grams(forecast, mass.median()) + " into the bath (from "
                            + FloatSentence.grams(forecast, mass.low()) + " to "
                            + FloatSentence.grams(forecast, mass.high()) + ')');
        }
        if (!question.stillWater()) {
            table.row("critical weight", critical(forecast));
        }
        String at = forecast.spareAtDrop().median() >= 0 ? "to spare at the drop" : "over at the drop";
        table.row(at, spare(forecast));
        if (forecast.aim().isPresent()) {
            BatchAim aim = forecast.aim().get();
            boolean damp = question.making() instanceof FilledMould;
            String where = damp ? " of damp mix into the mould" : " on the scale before the bath";
            table.row(
                    "aim for",
                    "at most " + FloatSentence.grams(forecast, aim.aimFor()) + where
                            + ": then a piece floats to the end 9 times of 10");
            table.row(
                    "never above",
                    FloatSentence.grams(forecast, aim.neverAbove()) + where
                            + ": the same for one piece, the hand left out");
        }
        AttitudeText.rows(forecast, table);
        OutcomeText.rows(forecast, table);
        if (forecast.fizzLost().isPresent()
                && question.making().isDried()
                && forecast.fizzLost().get().high() > 0) {
            table.row("fizz lost", NumberText.fizzLost(forecast.fizzLost().get()) + " before the bath");
        }
        MeasuredText.bathed(
                forecast.narrowing(), forecast.spareAtDrop(), forecast.probability(), forecast.fizzTime(), table);
        if (!forecast.drivers().isEmpty()) {
            boolean boat = forecast.limit().kind() == GoverningLimit.Kind.BOAT;
            String what = forecast.narrowing().isPresent() ? "what is left" : "what decides it";
            table.row(boat ? "what decides the spare" : what, drivers(forecast.drivers()));
        }
        return table;
    }

    /** The heaviest weight that floats to the end, with its band. */
    private static String critical(Forecast forecast) {
        Interval weight = forecast.critical().interval();
        String middle = FloatSentence.grams(forecast, weight.median());
        if (forecast.critical().share(CriticalWeights.Met.BELOW_RANGE) > MOST) {
            return "below " + middle + ": even the lightest piece that can be pressed does not float to the end";
        }
        boolean bent = forecast.critical().share(CriticalWeights.Met.NOT_MONOTONE) > MOST;
        return middle
                + (forecast.probability().isEmpty()
                        ? ""
                        : " (from " + FloatSentence.grams(forecast, weight.low()) + " to "
                                + FloatSentence.grams(forecast, weight.high()) + ')')
                + (bent ? ": heavier, it goes under; so do some lighter ones" : ": the heaviest into the bath that floats to the end");
    }

    private static String loaded(Question question) {
        return question.shape() == question.shape().bare() ? "" : ", what it carries counted";
    }

    private static String flooded(Question question) {
        return question.shape().hollow().isPresent() ? ", the hollow full of water" : "";
    }

    private static String spare(Forecast forecast) {
        double median = forecast.spareAtDrop().median();
        boolean boat = forecast.limit().kind() == GoverningLimit.Kind.BOAT;
        boolean bare = forecast.question().stillWater() || (boat && median > 0);
        String with = bare ? "" : ", clinging gas and soaking counted";
        String middle = FloatSentence.grams(forecast, Math.abs(median));
        if (forecast.probability().isEmpty()) {
            return middle + with;
        }
        return middle
                + " (from "
                + signed(forecast.spareAtDrop().low(), forecast.piece().mass())
                + " to "
                + signed(forecast.spareAtDrop().high(), forecast.piece().mass())
                + ")"
                + with;
    }

    /** What is to spare or over, in the digits of a piece of that weight, kg. */
    static String signed(double kilograms, double ofPiece) {
        return NumberText.grams(Math.abs(kilograms), ofPiece) + (kilograms >= 0 ? " to spare" : " over");
    }

    private static String drivers(List<Driver> drivers) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < Math.min(MOST_DRIVERS, drivers.size()); i++) {
            Driver driver = drivers.get(i);
            if (i > 0 && driver.share() < WORTH_NAMING) {
                break;
            }
            text.append(i > 0 ? ", " : "")
                    .append(driver.input().words())
                    .append(" (")
                    .append(NumberText.percent(Math.max(0, Math.min(1, driver.share()))))
                    .append(')');
        }
        return text.toString();
    }
}
