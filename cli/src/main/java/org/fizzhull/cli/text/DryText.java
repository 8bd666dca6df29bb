package org.fizzhull.cli.text;

import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import org.fizzhull.drying.DryingPhase;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.Source.Seen;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.Factor;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Units;

/** A drying forecast in a maker's words: the answer, why, what to do, the cautions. */
public record DryText(DryReport report) implements Answer {
    private static final String TOUCH =
            "Dry to the touch is not dry inside: go by weight. Do not seal a piece before it is ready, gas and water stay"
                    + " in; no rigid jar, bottle or glass, ever, for damp or unsure pieces. No oven, no microwave.";
    private static final String STORE =
            "Put away: a lid needs a vent; keep from steam, children and pets. Smell, colour and fizz fade; milk, oats and"
                    + " petals spoil once they take up water.";
    private static final String WARM = "Above 32 C butters melt.";

    /** Changes of weight below this are none to a maker, kg. */
    private static final double NOTICED = 0.2e-3;

    /** Air above which butters melt, K. */
    private static final double MELTING = 305.15;

    /** Air above which the caution comes first, K. */
    private static final double HOT = 318.15;

    private static final List<String> CAUTIONS =
            List.of("sealed-jars-burst", "jar-pressure", "too-hot", "alcohol-burns");

    @Override
    public String brief() {
        return cautioned(report, Table.paragraph(sentence(report)));
    }

    @Override
    public String whole() {
        StringBuilder out = new StringBuilder();
        out.append(Table.paragraph(sentence(report)))
                .append('\n')
                .append(table(report))
                .append('\n');
        for (Notice notice : report.notices()) {
            if (!CAUTIONS.contains(notice.code())) {
                out.append(Table.paragraph("Note: " + notice.text()));
            }
        }
        return cautioned(report, out.toString());
    }

    @Override
    public List<Notice> json(OutputStream out) {
        DryJson.write(out, report);
        return report.notices();
    }

    /** One plain sentence. */
    public static String sentence(DryReport report) {
        DryForecast f = report.forecast();
        RoomAir air = f.open().air();
        String shut = f.open().wrap().present() ? ", shut in its mould" : "";
        String room =
                "in this room (" + Say.celsius(air.temperature()) + ", " + Say.percent(air.humidity()) + ')' + shut;
        Optional<Interval> ready = report.ready();
        if (ready.isEmpty()) {
            String needs = f.needsHumidity().isPresent()
                    ? "; to be dry within " + Days.text(f.dryingTime()) + " it needs air below "
                            + Say.percent(f.needsHumidity().getAsDouble())
                    : "";
            return (f.course().neverDries() ? "Never dries " : "Is not dry within 60 days ") + room + needs + '.';
        }
        String time = Days.text(ready.get(), report.late());
        String when = report.at(ready.get().median())
                .map(date -> "on " + Days.date(date) + ", after " + time)
                .orElse("after " + time);
        String leaves = "; " + Say.grams(f.waterGone()) + " of water leaves in " + Days.text(f.dryingTime()) + ", "
                + Say.grams(f.course().stays()) + " stays in by design" + store(f) + '.';
        if (report.fits()) {
            Interval toGo = report.log().get().stillToGo();
            String still = toGo.median() < 0.5e-4
                    ? "Ready by its weight"
                    : "Not dry yet by its weight: " + Say.grams(toGo.median()) + " has still to go (from "
                            + Say.grams(toGo.low()) + " to " + Say.grams(toGo.high()) + ')';
            return still + "; ready " + room + ' ' + when + " from pressing.";
        }
        String unfit =
                report.log().isPresent() ? "The weighings do not fit this recipe in this room; without them: " : "";
        return unfit
                + (ready.get().median() > f.dryingTime()
                        ? "Not dry yet after " + Days.text(f.dryingTime()) + ": dry "
                        : "Dry ")
                + room
                + ' '
                + when
                + leaves;
    }

    private static Table table(DryReport report) {
        DryForecast f = report.forecast();
        Table table = new Table();
        table.row("damp, from the mould", weight(f.damp()));
        table.row(
                "into the bath",
                weight(f.last()) + " after " + Days.text(f.band().times().get(last(f))));
        table.row("for the label", weight(f.label()) + " on average, once all has left that can leave here");
        table.row("stays in by design", Say.grams(f.course().stays()) + " (oil, butter, glycerine)");
        f.wrappedAt().ifPresent(at -> table.row("wrapped", "after " + Days.text(at)));
        f.storeGain()
                .ifPresent(
                        gain -> table.row("in the store", gains(gain, f.course().soaked())));
        if (report.sellBy().isPresent()) {
            table.row("by " + Days.iso(report.sellBy().get()), sellBy(report));
        }
        table.row("fizz lost", share(f.fizzLost()));
        table.row("swelling", f.course().swelling().word());
        table.row("dry or fizz away", f.course().reactionSentence());
        f.needsHumidity()
                .ifPresent(below ->
                        table.row("dry within " + Days.text(f.dryingTime()), "in air below " + Say.percent(below)));
        table.row("keep it", keep(f));
        return table;
    }

    /** What a damp store does to it, where it does something. */
    private static String store(DryForecast f) {
        double gain = f.storeGain().orElse(0);
        return gain > NOTICED ? "; put away it " + gains(gain, f.course().soaked()) : "";
    }

    private static String gains(double gain, boolean soaked) {
        if (Math.abs(gain) < NOTICED) {
            return "keeps its weight";
        }
        return (gain > 0 ? "takes up " : "loses ") + Say.grams(Math.abs(gain)) + " of water"
                + (soaked ? " until its pores run wet" : "");
    }

    private static String sellBy(DryReport report) {
        if (report.inTime().isPresent()) {
            return Say.ofHundred(report.inTime().getAsDouble()) + " of 100 such batches are ready by then";
        }
        boolean late = report.ready().flatMap(time -> report.at(time.median())).stream()
                .anyMatch(date -> date.isAfter(report.sellBy().orElseThrow()));
        return late || report.ready().isEmpty() ? "likely not ready by then" : "likely ready by then";
    }

    private static String keep(DryForecast f) {
        if (!f.safe().possible()) {
            return "no air suits it: wrap it as soon as it is ready";
        }
        String above =
                f.safe().above() > 0 ? " and above " + Say.percent(f.safe().above()) : "";
        return "in air below " + Say.percent(f.safe().below()) + above + ", wrapped, not sealed in a jar";
    }

    private static String weight(Interval mass) {
        return mass.low() == mass.high()
                ? Say.grams(mass.median())
                : Say.grams(mass.median()) + " (from " + Say.grams(mass.low()) + " to " + Say.grams(mass.high()) + ')';
    }

    private static String share(Interval lost) {
        String middle = Decimals.text(100 * lost.median(), 2) + Say.UNIT + '%';
        return lost.low() == lost.high()
                ? middle
                : middle + " (from " + Decimals.text(100 * lost.low(), 2) + " to " + Decimals.text(100 * lost.high(), 2)
                        + Say.UNIT + "%), good to a factor of four";
    }

    private static int last(DryForecast f) {
        return f.band().times().size() - 1;
    }

    /** Cautions in front where the answer might be acted on before they are read, else behind. */
    private static String cautioned(DryReport report, String answer) {
        DryForecast f = report.forecast();
        StringBuilder first = new StringBuilder();
        StringBuilder behind = new StringBuilder(Table.paragraph("Caution: " + TOUCH));
        double warmest = 0;
        for (DryingPhase phase : f.plan().phases()) {
            warmest = Math.max(warmest, phase.air().temperature());
        }
        StringBuilder more = f.sealed() || warmest > HOT ? first : behind;
        for (Notice notice : report.notices()) {
            if (CAUTIONS.contains(notice.code())) {
                more.append(Table.paragraph("Caution: " + notice.text()));
            }
        }
        if (warmest > MELTING) {
            behind.append(Table.paragraph("Caution: " + WARM));
        }
        if (f.stored()) {
            behind.append(Table.paragraph("Caution: " + STORE));
        }
        return first + answer + behind;
    }

    @Override
    public String behind() {
        DryForecast f = report.forecast();
        StringBuilder out = new StringBuilder("\nBehind it\n");
        Table figures = new Table();
        figures.row("reaction number", Decimals.text(f.course().reactionNumber(), 3));
        figures.row("films stay liquid above", Say.percent(f.course().filmActivity()));
        figures.row("volume", Decimals.text(Units.inCubicCentimetres(f.shape().volume()), 6) + " cm3");
        figures.row("draws", f.sampling().samples() + ", seed " + f.sampling().seed());
        out.append(figures).append("\nUncertain inputs: prior, source\n");
        Table priors = new Table();
        for (Factor factor : f.factors().rows()) {
            Seen seen = factor.source().seen();
            priors.row(
                    factor.input().label(),
                    ExplainText.prior(factor) + "; " + factor.source().citation() + " [" + seen.words() + ']');
        }
        return out.append(priors).toString();
    }
}
