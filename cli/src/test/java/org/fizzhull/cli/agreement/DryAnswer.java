package org.fizzhull.cli.agreement;

import java.util.List;
import java.util.function.Consumer;

/** The answer of {@code dry} for itself. */
final class DryAnswer {
    static final List<Rule> RULES = List.of(
            Rule.of("dry", "what never dries is not to be wrapped once it is ready", DryAnswer::never),
            Rule.of("dry", "dry, not dry yet and never are said by the time asked for", DryAnswer::state),
            Rule.of("dry", "the rows tell the weights of the object", DryAnswer::weights),
            Rule.of("dry", "water that leaves makes lighter, water that is taken up makes heavier", DryAnswer::water),
            Rule.of("dry", "a band of the fizz lost stands alone", DryAnswer::lost),
            Rule.of("dry", "the verdict of the object opens the text", (reply, breach) -> {
                if (!reply.opening().equals(reply.word("verdict").replaceAll("\\s+", " "))) {
                    breach.accept(reply.word("verdict") + " and " + reply.opening());
                }
            }));

    private DryAnswer() {}

    private static void never(Reply reply, Consumer<String> breach) {
        boolean dries = reply.given("ready_after_h");
        if (!dries && reply.text().matches(".*([Ww]rap it as soon|as soon as it is (dry|ready)|once it is dry).*")) {
            breach.accept(reply.text());
        }
        if (!dries && !reply.text().matches(".*(Never dries|[Nn]ot dry within|to be dry within 60 days).*")) {
            breach.accept(reply.opening());
        }
    }

    private static void state(Reply reply, Consumer<String> breach) {
        double share = reply.number("dries_fraction");
        if (share > 0 && reply.text().contains("Never dries")) {
            breach.accept(share + " of the draws dry: " + reply.opening());
        }
        if (!reply.given("ready_after_h")) {
            if (reply.opening().contains("Dry in this room") || reply.opening().contains("Not dry yet")) {
                breach.accept(reply.opening());
            }
            return;
        }
        if (share < 0.5) {
            breach.accept("a time is told, and " + share + " of the draws dry: " + reply.opening());
        }
        if (reply.opening().contains("Never dries")) {
            breach.accept(reply.opening());
        }
    }

    private static void weights(Reply reply, Consumer<String> breach) {
        row(reply, "damp, from the mould", reply.number("/damp_mass_g/median"), breach);
        row(reply, "into the bath", reply.number("/final_mass_g/median"), breach);
        row(reply, "for the label", reply.number("/label_mass_g/median"), breach);
        if (!reply.given("store_gain_g")) { // of pieces that are put away only the whole answer tells it
            row(reply, "stays in by design", reply.number("never_dries_g"), breach);
        }
    }

    private static void row(Reply reply, String label, double value, Consumer<String> breach) {
        if (!Told.same(Told.grams(reply.row(label)), value)) {
            breach.accept(label + " is " + value + ", told: " + reply.row(label));
        }
    }

    private static void water(Reply reply, Consumer<String> breach) {
        double gone = reply.number("/water_gone_g/median");
        if (gone < -0.1 && reply.opening().contains("of water leaves")) {
            breach.accept(gone + ": " + reply.opening());
        }
        if (gone > 0.1 && reply.opening().matches(".*takes up .* of water in .*")) {
            breach.accept(gone + ": " + reply.opening());
        }
        double taken = reply.number("store_water_gain_g");
        String store = reply.row("in the store");
        if (taken > 0.3 && store.contains("loses") && store.contains("of water") && !store.contains("takes up")) {
            breach.accept(taken + ": " + store);
        }
    }

    private static void lost(Reply reply, Consumer<String> breach) {
        if (reply.text().contains("factor of")) {
            breach.accept(reply.row("fizz lost"));
        }
    }
}
