package org.fizzhull.validation.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import org.fizzhull.evidence.Source;

/** Writes VALIDATION.md. The same rows give the same bytes in any locale: numbers are cut to what the tolerance can tell. */
public final class Report {
    private final StringBuilder page = new StringBuilder();

    private Report() {}

    public static String of(List<Outcome> outcomes, List<Source> sources) {
        Report report = new Report();
        report.head(outcomes);
        Map<String, List<Outcome>> byTable = new LinkedHashMap<>();
        for (Outcome outcome : outcomes) {
            byTable.computeIfAbsent(outcome.check().table(), table -> new ArrayList<>())
                    .add(outcome);
        }
        byTable.forEach(report::table);
        report.disagreements(outcomes);
        report.sources(outcomes, sources);
        return report.page.toString();
    }

    private void head(List<Outcome> outcomes) {
        line("# Validation");
        line("");
        line(
                "Generated from `validation/src/test/resources/checks`; do not edit. `mvn verify` fails when this page and the"
                        + " library differ; rewrite it with `mvn -pl validation -am verify -Dvalidation.write=true`.");
        line("");
        line("An expected value is never this library's own. Origin says who says so, \"met\" how that was met: *seen*:"
                + " opened; *second-hand*: quoted elsewhere; *from memory*: recalled; *computed*: derived or run.");
        line("");
        line("| origin | checks |");
        line("|---|---|");
        for (Origin origin : Origin.values()) {
            long count =
                    outcomes.stream().filter(o -> o.check().origin() == origin).count();
            if (count > 0) {
                line("| " + origin.words() + " | " + count + " |");
            }
        }
        line("| all | " + outcomes.size() + " |");
        summary(outcomes);
    }

    /** What a reader should know before the tables: how much of all this is outside evidence on a whole piece. */
    private void summary(List<Outcome> outcomes) {
        long published = count(outcomes, check -> check.origin() == Origin.PUBLISHED);
        long piece = count(outcomes, MainJob::holds);
        long publishedPiece = count(outcomes, check -> MainJob.holds(check) && check.origin() == Origin.PUBLISHED);
        long disagree = count(outcomes, Check::isDisagreement);
        line("");
        line(published + " of " + outcomes.size() + " rows are published values. " + piece
                + " are about the job itself, a whole piece that is pressed, dried, floats or fizzes; " + publishedPiece
                + " of these are published, the others common practice without a source, to which several defaults were"
                + " set. No published measurement of a whole piece's weight, drying or float was found. In " + disagree
                + " rows the library disagrees; they stand under \"Where the model disagrees\".");
        line("");
        line("A source `validation/reference/NAME.py` is a program apart from this library, with its output beside it"
                + " (`NAME.csv`, with the versions used); `python3 validation/reference/run.py` computes it anew.");
    }

    private static long count(List<Outcome> outcomes, Predicate<Check> which) {
        return outcomes.stream().map(Outcome::check).filter(which).count();
    }

    private void table(String name, List<Outcome> outcomes) {
        line("");
        line("## Package `" + name + "`");
        line("");
        line("| what | inputs | unit | expected | ours | deviation | tolerance | why that tolerance | origin | source |"
                + " met |");
        line("|---|---|---|---:|---:|---:|---:|---|---|---|---|");
        for (Outcome o : outcomes) {
            Check c = o.check();
            cells(
                    c.what(),
                    c.inputs().toString(),
                    c.unit(),
                    shown(o.expected(), o) + (c.isLive() ? " (live)" : ""),
                    shown(o.ours(), o),
                    shown(o.deviation(), o),
                    Rounding.plain(c.tolerance()),
                    c.whyTolerance(),
                    c.origin().words().toLowerCase(Locale.ROOT),
                    c.sourceKey(),
                    c.seen().words());
        }
    }

    private void disagreements(List<Outcome> outcomes) {
        line("");
        line("## Where the model disagrees");
        line("");
        List<Outcome> off =
                outcomes.stream().filter(o -> o.check().isDisagreement()).toList();
        if (off.isEmpty()) {
            line("Nowhere, in the rows above.");
        }
        for (Outcome o : off) {
            Check c = o.check();
            String unit = c.unit().equals("1") ? "" : " " + c.unit();
            line("- " + c.what() + " (" + c.inputs() + "): " + c.sourceKey() + " has "
                    + shown(o.expected(), o) + unit + ", the library "
                    + shown(o.ours(), o) + unit + ". " + c.whyDisagrees());
        }
    }

    private void sources(List<Outcome> outcomes, List<Source> sources) {
        line("");
        line("## Sources");
        line("");
        line("| key | citation | met | checks |");
        line("|---|---|---|---:|");
        List<Source> sorted =
                sources.stream().sorted(Comparator.comparing(Source::key)).toList();
        for (Source source : sorted) {
            long count = outcomes.stream()
                    .filter(o -> o.check().sourceKey().equals(source.key()))
                    .count();
            cells(source.key(), source.citation(), source.seen().words(), Long.toString(count));
        }
    }

    private static String shown(double value, Outcome o) {
        return Rounding.toTolerance(value, o.check().tolerance(), o.expected());
    }

    private void cells(String... cells) {
        StringBuilder row = new StringBuilder("|");
        for (String cell : cells) {
            row.append(' ').append(cell.replace("|", "\\|")).append(" |");
        }
        line(row.toString());
    }

    private void line(String text) {
        page.append(text).append('\n');
    }
}
