package org.fizzhull.cli.floating;

import java.util.List;
import org.fizzhull.answer.body.AnswerBody;
import org.fizzhull.answer.body.FloatAnswer;
import org.fizzhull.cli.text.Answer;
import org.fizzhull.cli.text.FirstAnswer;
import org.fizzhull.cli.text.NoticeText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.Table;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalWeights;

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

    private static final int MOST_DRIVERS = 3;

    /** Length of a text behind which no driver more fits two lines. */
    private static final int TWO_LINES = 60;

    @Override
    public String brief() {
        return Table.paragraph(sentence(forecast)) + Table.paragraph("Caution: " + CAUTION);
    }

    @Override
    public String whole() {
        return first().whole();
    }

    @Override
    public String shown() {
        return first().text();
    }

    private FirstAnswer first() {
        String opening = Table.paragraph(sentence(forecast)) + next() + '\n';
        boolean all = forecast.next().isEmpty() && forecast.narrowing().isEmpty();
        return FirstAnswer.of(
                        opening + table(forecast, all),
                        forecast.notices(),
                        forecast.effervescence().flatMap(Effervescence::notice),
                        Table.paragraph("Caution: " + CAUTION))
                .whole(opening + table(forecast, true));
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
        return Table.paragraph("To know better: " + NextText.what(next, forecast) + ". Then add   "
                + NextText.option(next) + "   (" + NextText.worth(next) + ").");
    }

    /** The rows; beside what to measure, or what was, a first answer leaves out what else could be known better. */
    private static Table table(Forecast forecast, boolean all) {
        Question question = forecast.question();
        Table table = new Table();
        if ((all && forecast.limit().kind() == Forecast.GoverningLimit.Kind.BOAT) || question.stillWater()) {
            table.row("float limit", still(forecast));
        }
        if (forecast.boatLimitMass().isPresent()) {
            String limit =
                    FloatSentence.grams(forecast, forecast.boatLimitMass().getAsDouble());
            table.row("rim limit", limit + ": heavier, and the rim goes under");
        }
        if (forecast.mass().isPresent() && forecast.probability().isPresent()) {
            Interval mass = forecast.mass().get();
            table.row("weight", FloatSentence.grams(forecast, mass.median()) + " into the bath" + band(forecast, mass));
        }
        if (!question.stillWater()) {
            table.row("critical weight", critical(forecast));
        }
        String at = forecast.spareAtDrop().median() >= 0 ? "spare at the drop" : "over at the drop";
        table.row(at, spare(forecast));
        if (forecast.aim().isPresent()) {
            CriticalWeights.BatchAim aim = forecast.aim().get();
            boolean damp = question.making() instanceof Moulded.Filled;
            String where = damp ? " of damp mix" : " on the scale";
            table.row(
                    "aim for",
                    "at most " + FloatSentence.grams(forecast, aim.aimFor()) + where + ": 9 of 10 float to the end");
            table.row(
                    "never above",
                    FloatSentence.grams(forecast, aim.neverAbove()) + where + ", where each piece is weighed");
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
        if (all && !forecast.drivers().isEmpty()) {
            boolean boat = forecast.limit().kind() == Forecast.GoverningLimit.Kind.BOAT;
            String what = forecast.narrowing().isPresent() ? "what is left" : "what decides it";
            table.row(boat ? "decides the spare" : what, drivers(forecast.drivers()));
        }
        return table;
    }

    /** The heaviest weight that floats to the end, with its band. */
    private static String critical(Forecast forecast) {
        Interval weight = forecast.critical().interval();
        String middle = FloatSentence.grams(forecast, weight.median());
        if (forecast.critical().share(CriticalWeights.Met.BELOW_RANGE) > MOST) {
            return "below " + middle + ": even the lightest pressed piece sinks";
        }
        boolean bent = forecast.critical().share(CriticalWeights.Met.NOT_MONOTONE) > MOST;
        return middle
                + (forecast.probability().isEmpty() ? "" : band(forecast, weight))
                + (bent ? "; heavier ones sink, some lighter ones too" : ", the most that floats to the end");
    }

    private static String band(Forecast forecast, Interval mass) {
        String low = FloatSentence.grams(forecast, mass.low());
        return " (" + low.substring(0, low.indexOf(NumberText.UNIT)) + " to "
                + FloatSentence.grams(forecast, mass.high()) + ')';
    }

    /** The heaviest that still water carries, which the sentence names where it governs. */
    static String still(Forecast forecast) {
        Question question = forecast.question();
        return FloatSentence.grams(forecast, forecast.limitMass()) + loaded(question) + flooded(question) + " in "
                + NumberText.celsius(question.bath().temperature()) + " water, without clinging gas";
    }

    private static String loaded(Question question) {
        return question.shape() == question.shape().bare() ? "" : " with what it carries";
    }

    private static String flooded(Question question) {
        return question.shape().hollow().isPresent() ? ", flooded," : "";
    }

    private static String spare(Forecast forecast) {
        double median = forecast.spareAtDrop().median();
        boolean boat = forecast.limit().kind() == Forecast.GoverningLimit.Kind.BOAT;
        boolean bare = forecast.question().stillWater() || (boat && median > 0);
        String with = bare ? "" : "; gas counted";
        String middle = FloatSentence.grams(forecast, Math.abs(median));
        if (forecast.probability().isEmpty()) {
            return middle + with;
        }
        return middle
                + " ("
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

    private static String drivers(List<Forecast.Driver> drivers) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < Math.min(MOST_DRIVERS, drivers.size()); i++) {
            Forecast.Driver driver = drivers.get(i);
            if (i > 0 && (driver.share() < WORTH_NAMING || text.length() > TWO_LINES)) {
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
