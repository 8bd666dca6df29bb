package org.fizzhull.cli.text;

import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.fizzhull.decide.Cause;
import org.fizzhull.decide.Check;
import org.fizzhull.decide.Symptom;
import org.fizzhull.decide.Why;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.Sampling;

/**
 * Causes in a maker's words.
 *
 * @param why what to say
 * @param sampling draws for each cause
 * @param asked the {@code advise} command for the design as planned
 */
public record WhyText(Why why, Sampling sampling, String asked) implements Answer {
    private static final String CAUTION =
            "A forecast, not an inspection: how often each cause happens is assumed. A piece that puffed may be under"
                    + " pressure in a closed jar: open it away from the face.";

    /** Causes below this chance get no line. */
    private static final double WORTH_NAMING = 0.03;

    @Override
    public String brief() {
        return Table.paragraph(sentence()) + Table.paragraph("Caution: " + CAUTION);
    }

    @Override
    public String whole() {
        StringBuilder out = new StringBuilder(Table.paragraph(sentence()));
        if (why.best().isPresent()) {
            out.append(Table.paragraph(checkSentence(why.best().get())));
        }
        Table table = new Table();
        for (Why.Chance chance : why.causes()) {
            if (chance.probability() >= WORTH_NAMING) {
                table.row(FloatSentence.chance(chance.probability()), words(chance.cause()) + because(chance));
            }
        }
        out.append('\n').append(table).append('\n');
        if (why.causes().get(0).cause() != Cause.SOMETHING_ELSE) {
            out.append(Table.paragraph("What to change in the plan: " + asked));
        }
        return out.append(Table.paragraph("Caution: " + CAUTION)).toString();
    }

    @Override
    public String behind() {
        StringBuilder out = new StringBuilder("\n");
        for (Why.Chance chance : why.causes()) {
            out.append(Table.paragraph(words(chance.cause()) + ": chance " + Say.tenths(100 * chance.probability())
                    + " %, prior weight " + Say.tenths(chance.cause().weight()) + " (assumed), shows this symptom with "
                    + Say.tenths(100 * chance.showsIt()) + " %, weighs "
                    + Say.grams(chance.mass().median()) + " ("
                    + Say.grams(chance.mass().low()) + " to "
                    + Say.grams(chance.mass().high()) + ")."));
        }
        return out.toString();
    }

    @Override
    public List<Notice> json(OutputStream out) {
        List<Notice> notices = new ArrayList<>();
        if (!why.computed()) {
            notices.add(new Notice("not-computed", notComputed(why.symptom())));
        }
        if (why.best().isEmpty()) {
            notices.add(new Notice("no-check", "best_check is null: no check tells the two likeliest causes apart."));
        }
        try (Json json = Json.open(out, "why")) {
            json.whole("seed", sampling.seed())
                    .whole("samples", sampling.samples())
                    .text("saw", why.symptom().word())
                    .number("as_planned", why.asPlanned());
            json.array("causes");
            for (Why.Chance chance : why.causes()) {
                json.object()
                        .text("cause", words(chance.cause()))
                        .number("probability", chance.probability())
                        .text("because", Say.plain(because(chance)).replaceFirst("^: ", ""))
                        .text("check", chance.check().map(WhyText::words).orElse(null))
                        .end();
            }
            json.endArray();
            if (why.best().isPresent()) {
                Why.BestCheck best = why.best().get();
                json.object("best_check")
                        .text("what", words(best.check()))
                        .text(
                                "splits",
                                words(why.causes().get(0).cause()) + " | "
                                        + words(why.causes().get(1).cause()))
                        .text("type", type(best.check()))
                        .end();
            } else {
                json.nothing("best_check");
            }
            json.notices(notices);
        }
        return notices;
    }

    private String sentence() {
        Why.Chance first = why.causes().get(0);
        String likeliest = first.cause() == Cause.SOMETHING_ELSE
                ? "no single cause stands out; most likely all went as planned and the plan itself is at fault, or it is"
                        + " something that is not computed"
                : words(first.cause());
        String text = "Most likely (" + FloatSentence.chance(first.probability()) + "): " + likeliest + '.';
        if (!why.computed()) {
            return notComputed(why.symptom()) + ' ' + text;
        }
        return text + " As planned, such a batch would show this with a chance of "
                + FloatSentence.chance(why.asPlanned().orElse(0)) + '.';
    }

    private static String notComputed(Symptom symptom) {
        return symptom == Symptom.CRACKED
                ? "Cracks are not computed: what follows rests on the size and the weight alone."
                : "How it tips is not computed here: what follows rests on the size and the weight alone.";
    }

    private String because(Why.Chance chance) {
        String shows =
                why.computed() ? "shows it in " + FloatSentence.chance(chance.showsIt()) + " of such batches" : "";
        String weighs = why.seen().mass().isPresent()
                ? (shows.isEmpty() ? "" : ", ") + "pieces then weigh "
                        + Say.grams(chance.mass().low()) + " to "
                        + Say.grams(chance.mass().high()) + ", yours "
                        + Say.grams(why.seen().mass().getAsDouble())
                : "";
        return shows.isEmpty() && weighs.isEmpty() ? "" : ": " + shows + weighs;
    }

    private String checkSentence(Why.BestCheck best) {
        return "The check that tells most: " + words(best.check()) + ": " + reading(best.check(), best.ifFirst())
                + " for \""
                + words(why.causes().get(0).cause()) + "\", " + reading(best.check(), best.ifSecond()) + " for \""
                + words(why.causes().get(1).cause()) + "\".";
    }

    private static String reading(Check check, Interval value) {
        return switch (check) {
            case WEIGH_A_PIECE, WEIGH_AFTER_TWO_DAYS ->
                Say.grams(Math.max(0, value.low())) + " to " + Say.grams(value.high());
            case MEASURE_ACROSS -> Say.millimetres(value.low()) + " to " + Say.millimetres(value.high());
            case TIME_THE_FIZZ -> FateText.duration(value.low()) + " to " + FateText.duration(value.high());
            case READ_A_HYGROMETER ->
                Say.percent(Math.max(0, value.low())) + " to " + Say.percent(Math.min(1, value.high()));
        };
    }

    private static String words(Check check) {
        return switch (check) {
            case WEIGH_A_PIECE -> "weigh a piece of the same batch";
            case MEASURE_ACROSS -> "measure a piece across";
            case TIME_THE_FIZZ -> "time how long a piece of the batch fizzes";
            case WEIGH_AFTER_TWO_DAYS ->
                "weigh a piece, leave it two days in a dry room, weigh it again: what it loses";
            case READ_A_HYGROMETER -> "read a hygrometer in the drying room";
        };
    }

    /** What to type with the reading. */
    private static String type(Check check) {
        return switch (check) {
            case WEIGH_A_PIECE -> "--seen \"141 g\"";
            case MEASURE_ACROSS -> "--seen \"across 65 mm\"";
            case TIME_THE_FIZZ -> "--measured-fizz \"4 min\"";
            case WEIGH_AFTER_TWO_DAYS -> "--dry-for 5 d";
            case READ_A_HYGROMETER -> "--air \"21 C, 70 %\"";
        };
    }

    static String words(Cause cause) {
        return switch (cause) {
            case TOO_MUCH_MIX -> "too much mix in the mould";
            case PRESSED_TOO_HARD -> "pressed harder than you think";
            case PRESSED_TOO_LIGHTLY -> "pressed less hard than you think";
            case NOT_DRY_INSIDE -> "not dry inside";
            case LOST_ITS_FIZZ -> "lost its fizz before the bath";
            case LITTLE_CLINGING_GAS -> "the gas on it is thin or lets go early";
            case MOULD_SMALLER -> "the mould is smaller than you think";
            case WATER_SOAKED_IN -> "water soaked in";
            case HEAVY_POWDER -> "a powder is heavier than the table has it";
            case RIM_DIPPED -> "the rim dipped under as it was put in";
            case TOO_MUCH_LIQUID -> "too much liquid in the mix";
            case TOO_LITTLE_LIQUID -> "too little liquid in the mix";
            case DAMP_ROOM -> "the room is damper than you think";
            case SOMETHING_ELSE -> "something else, or the plan itself";
        };
    }
}
