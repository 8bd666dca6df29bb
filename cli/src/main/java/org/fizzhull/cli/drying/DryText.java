package org.fizzhull.cli.drying;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.fizzhull.answer.body.AnswerBody;
import org.fizzhull.answer.body.DryAnswer;
import org.fizzhull.answer.body.DryReport;
import org.fizzhull.cli.floating.ExplainText;
import org.fizzhull.cli.text.Answer;
import org.fizzhull.cli.text.FirstAnswer;
import org.fizzhull.cli.text.NoticeText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.Table;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.Source.Seen;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.model.ReadyTimes;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.Role;

/** A drying forecast in a maker's words: the answer, why, what to do, the cautions. */
public record DryText(DryReport report) implements Answer {
    private static final String TOUCH = "Dry outside is not dry inside: go by weight. No oven, no microwave.";
    private static final String SEALED =
            " Never seal damp or unsure pieces in a jar, bottle or glass: gas and water stay in.";
    private static final String STORE = "Put away: a lid needs a vent; keep from steam, children and pets.";
    private static final Notice FADES = new Notice(
            "fades", "Smell, colour and fizz fade in the store; milk, oats and petals spoil once they take up water.");
    private static final String WARM = "Above 32\u00A0C butters melt.";

    /** Changes of weight below this are none to a maker, kg. */
    private static final double NOTICED = 0.2e-3;

    /** Half of the last digit that is shown of a weight, kg. */
    private static final double SHOWN = 0.05e-3;

    /** Air above which butters melt, K. */
    private static final double MELTING = 305.15;

    /** Air above which the caution comes first, K. */
    private static final double HOT = 318.15;

    @Override
    public String brief() {
        return cautionsFirst() + Table.paragraph(sentence(report)) + cautions();
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
        String opening = cautionsFirst() + Table.paragraph(sentence(report)) + '\n';
        List<Notice> notes = new ArrayList<>(report.forecast().notices());
        notes.removeIf(NoticeText::isCaution);
        if (report.forecast().stored()) {
            notes.add(FADES);
        }
        return FirstAnswer.of(
                        opening + table(report, false),
                        notes,
                        report.forecast().effervescence().notice(),
                        cautions())
                .whole(opening + table(report, true));
    }

    @Override
    public AnswerBody body() {
        return new DryAnswer(report, Optional.of(NumberText.plain(sentence(report))));
    }

    @Override
    public List<Notice> aside() {
        return report.forecast().notices();
    }

    /** The sentence of the answer; of a mix that does not fizz that comes first. */
    public static String sentence(DryReport report) {
        DryForecast f = report.forecast();
        String fizz =
                f.effervescence().notice().map(first -> first.text() + ' ').orElse("");
        boolean unfit = f.log().isPresent() && report.weighed().isEmpty();
        return fizz
                + (unfit ? "The weighings do not fit this recipe in this room; without them: " : "")
                + dries(report);
    }

    private static String dries(DryReport report) {
        DryForecast f = report.forecast();
        RoomAir air = f.open().air();
        String shut = f.open().wrap().present() ? ", shut in its mould" : "";
        String room = "in this room (" + NumberText.celsius(air.temperature()) + ", "
                + NumberText.percent(air.humidity()) + ')' + shut;
        Optional<Interval> ready = report.ready();
        if (gains(report)) {
            return "Takes up water " + room + ": "
                    + NumberText.grams(f.asked().weighings().orElseThrow().gain())
                    + " more between two weighings; hang it in drier air.";
        }
        if (ready.isEmpty()) {
            String needs = f.needsHumidity().isPresent()
                    ? "; to be dry within " + Days.text(f.dryingTime()) + " it needs air below "
                            + NumberText.percent(f.needsHumidity().getAsDouble())
                    : "";
            return undried(f, room) + needs + '.';
        }
        if (ready.get().median() == 0) {
            String most = ready.get().high() > 0
                    ? "; if anything, it takes up to " + Days.text(ready.get().high())
                    : "";
            return "Dry as it leaves the mould: no water has to leave it " + room + most + '.';
        }
        String time = Days.text(ready.get(), f.late());
        String when = report.at(ready.get().median())
                .map(date -> "on " + Days.date(date) + ", after " + time)
                .orElse("after " + time);
        if (report.weighed().isPresent()) {
            return byWeight(report.weighed().get().stillToGo()) + "; ready " + room + ' ' + when + " from pressing.";
        }
        double taken = f.store().map(DryForecast.Store::water).orElse(0.0);
        return (ready.get().median() > f.dryingTime()
                        ? "Not dry yet after " + Days.text(f.dryingTime()) + ": dry "
                        : "Dry ")
                + room + ' ' + when + "; "
                + moved(f.waterGone().median(), "of water") + " in " + Days.text(f.dryingTime())
                + (taken > NOTICED ? "; put away it takes up " + NumberText.grams(taken) + " of water" : "") + '.';
    }

    /** Whether the weighings fit the course and say that a piece takes up water. */
    private static boolean gains(DryReport report) {
        return report.weighed().isPresent()
                && report.forecast().asked().weighings().filter(DryLog::gains).isPresent();
    }

    /** What the same draws say that give the chance of being ready by a day: never is said where none of them dries. */
    private static String undried(DryForecast f, String room) {
        double soon = f.readyWithin(ReadyTimes.LONGEST);
        if (soon > 0) {
            String likely = Probability.Likelihood.of(soon).words();
            return Character.toUpperCase(likely.charAt(0)) + likely.substring(1) + " to be dry within 60 days " + room
                    + ": " + NumberText.ofHundred(soon) + " of 100 such batches are";
        }
        return (f.dries() == 0 && f.course().neverDries() ? "Never dries " : "Is not dry within 60 days ") + room;
    }

    private static String byWeight(Interval toGo) {
        return toGo.median() < SHOWN
                ? "Ready by its weight"
                : "Not dry yet by its weight: " + NumberText.grams(toGo.median()) + " has still to go (from "
                        + NumberText.grams(toGo.low()) + " to " + NumberText.grams(toGo.high()) + ')';
    }

    /** The rows; of a piece that is put away a first answer leaves out what was typed and what stays in. */
    private static Table table(DryReport report, boolean whole) {
        DryForecast f = report.forecast();
        boolean all = whole || !f.stored();
        Table table = new Table();
        table.row("damp, from the mould", weight(f.damp()));
        table.row("into the bath", weight(f.last()) + " after " + Days.text(f.end()));
        table.row(
                "for the label",
                weight(f.label()) + " on average"
                        + (whole ? ", dried as far as this room dries it; weigh ten of your own" : ""));
        if (all) {
            table.row(
                    "stays in by design",
                    NumberText.grams(f.course().stays()) + " of oil, butter, glycerine and the like");
            f.wrappedAt().ifPresent(at -> table.row("wrapped", "after " + Days.text(at)));
        }
        f.store()
                .ifPresent(store ->
                        table.row("in the store", store(store, f.course().soaked())));
        if (report.readyBy().isPresent()) {
            table.row("by " + DryReport.minute(report.readyBy().get()), inTime(report));
        }
        if (f.blend().moles().gas() > 0) {
            table.row("fizz lost", NumberText.fizzLost(f.fizzLost()));
        }
        if (f.course().swelling() != DryingCourse.Swelling.NONE) {
            table.row("swelling", f.course().swelling().word() + (f.swollenFilms() > 0 ? ", of the piece itself" : ""));
        }
        if (f.open().room().isPresent()) {
            table.row("air of the room", room(f));
        }
        if (report.ready().isPresent() && !gains(report)) {
            f.needsHumidity()
                    .ifPresent(below -> table.row(
                            "dry within " + Days.text(f.dryingTime()), "in air below " + NumberText.percent(below)));
        }
        table.row("keep it", keep(f, whole));
        return table;
    }

    /** The air that a closed room comes to with the pieces in it. */
    private static String room(DryForecast f) {
        return "at most " + NumberText.percent(f.dampestRoom()) + " humidity with the pieces in it, "
                + NumberText.percent(f.roomAfter()) + " after " + Days.text(f.dryingTime());
    }

    private static String store(DryForecast.Store store, boolean soaked) {
        if (Math.abs(store.gain()) < NOTICED && store.gas() < NOTICED) {
            return "keeps its weight";
        }
        List<String> parts = new ArrayList<>(2);
        if (store.gas() >= SHOWN) {
            parts.add(NumberText.grams(store.gas()) + " of gas leaves");
        }
        if (Math.abs(store.water()) >= SHOWN) {
            parts.add(moved(-store.water(), "of water"));
        }
        return NumberText.grams(Math.abs(store.gain()))
                + (store.gain() > 0 ? " heavier: " : " lighter: ")
                + String.join(", ", parts)
                + (soaked ? ", until its pores run wet" : "");
    }

    /** An amount that leaves, kg; below 0 it comes in. */
    private static String moved(double leaving, String what) {
        return Math.abs(leaving) < SHOWN
                ? "hardly any water leaves"
                : NumberText.grams(Math.abs(leaving)) + ' ' + what + (leaving < 0 ? " enters" : " leaves");
    }

    private static String inTime(DryReport report) {
        return NumberText.ofHundred(report.inTime().orElseThrow()) + " of 100 such batches are ready by then";
    }

    private static String keep(DryForecast f, boolean whole) {
        if (!f.keeps()) {
            return f.ready().isPresent()
                    ? "no air keeps it for long: wrap it as soon as it is ready"
                    : "no air keeps it long once dry; less of its salts helps"
                            + (whole ? "; they take up water where it is damp, or give it up where it is dry" : "");
        }
        String above = f.keepsAbove() > 0 ? " and above " + NumberText.percent(f.keepsAbove()) : "";
        return "in air below " + NumberText.percent(f.keepsBelow()) + above
                + (f.ready().isPresent() ? ", wrapped, not sealed in a jar" : ", not wrapped before it is dry");
    }

    private static String weight(Interval mass) {
        return mass.low() == mass.high()
                ? NumberText.grams(mass.median(), mass.median())
                : NumberText.grams(mass.median(), mass.median()) + " (from "
                        + NumberText.grams(mass.low(), mass.median()) + " to "
                        + NumberText.grams(mass.high(), mass.median()) + ')';
    }

    /** The cautions that stand in front, where the answer might be acted on before they are read. */
    private String cautionsFirst() {
        return early() ? NoticeText.paragraphs(report.forecast().notices(), Notice.Kind.CAUTION) : "";
    }

    /** The cautions behind the answer. */
    private String cautions() {
        DryForecast f = report.forecast();
        boolean jars = f.stored() || f.sealed();
        StringBuilder behind = new StringBuilder(Table.paragraph("Caution: " + TOUCH + (jars ? "" : SEALED)));
        if (!early()) {
            behind.append(NoticeText.paragraphs(f.notices(), Notice.Kind.CAUTION));
        }
        if (warmest() > MELTING && buttery(f.blend().recipe())) {
            behind.append(Table.paragraph("Caution: " + WARM));
        }
        if (f.stored()) {
            behind.append(Table.paragraph("Caution: " + STORE));
        }
        return behind.toString();
    }

    /** Whether there is butter in a mix, on either side of the recipe. */
    private static boolean buttery(Recipe recipe) {
        return Stream.of(recipe.dry(), recipe.wet())
                .flatMap(List::stream)
                .anyMatch(part -> part.ingredient().role() == Role.BUTTER && part.mass() > 0);
    }

    private boolean early() {
        return report.forecast().sealed() || warmest() > HOT;
    }

    /** The warmest air on its way, K. */
    private double warmest() {
        double warmest = 0;
        for (DryingPhase phase : report.forecast().plan().phases()) {
            warmest = Math.max(warmest, phase.air().temperature());
        }
        return warmest;
    }

    @Override
    public String behind() {
        DryForecast f = report.forecast();
        StringBuilder out = new StringBuilder("\nBehind it\n");
        Table figures = new Table();
        OptionalDouble number = f.course().reactionNumber();
        figures.row(
                "reaction number",
                number.isPresent()
                        ? Decimals.text(number.getAsDouble(), 3) + ": "
                                + f.course().reactionSentence()
                        : "none: by the central values it never dries, so the reaction goes on");
        figures.row("films stay liquid above", NumberText.percent(f.course().filmActivity()));
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
        out.append(priors);
        return out.append(NoticeText.paragraphs(f.notices(), Notice.Kind.REMARK))
                .toString();
    }
}
