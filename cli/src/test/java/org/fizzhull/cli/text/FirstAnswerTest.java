package org.fizzhull.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.cli.CommandRun;
import org.fizzhull.evidence.Notice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A first answer fits twenty lines of eighty columns, a few more where it asks for a measurement. */
class FirstAnswerTest {
    private static final int WITH_A_MEASUREMENT = 23;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "float|--shape|sphere(diameter=65 mm)|--mass|138 g",
                "float|--shape|dome(diameter=80 mm)|--mass|129 g +- 4 g",
                "float|--shape|bowl(diameter=90 mm, wall=15 mm)|--mass|150 g",
                "float|--shape|geode(diameter=80 mm, wall=14 mm, crystals=20 g)|--mass|120 g",
                "float|--shape|dome(diameter=80 mm)|--mass|120 g|--on-top|6 g coarse salt|--inside|8 g, 12 mL",
                "float|--shape|sphere(diameter=65 mm)|--mass|142 g|--measured-rise|95 s at 150 g, 50 mm left",
                "float|--shape|sphere(diameter=65 mm)|--recipe|src/doc/recipes/lemon.yaml|--fill|137 g",
                "float|--shape|sphere(diameter=65 mm)|--recipe|src/doc/recipes/lemon.yaml|--press|firm",
                "press|--shape|sphere(diameter=65 mm)|--recipe|src/doc/recipes/sea-foam.yaml|--press|hard",
                "press|--shape|dome(diameter=80 mm)|--recipe|src/doc/recipes/harbour-clay.yaml|--press|light",
                "fizz|--shape|sphere(diameter=65 mm)|--recipe|src/doc/recipes/lemon.yaml|--mass|150 g",
                "fizz|--shape|dome(diameter=80 mm)|--recipe|src/doc/recipes/harbour-clay.yaml|--mass|129 g",
                "dry|--shape|sphere(diameter=65 mm)|--recipe|src/doc/recipes/lemon.yaml|--fill|137 g|--air|21 C, 50 %",
            })
    void fits(String line) {
        List<String> words = new ArrayList<>(List.of(line.split("\\|")));
        words.addAll(List.of("--samples", "256"));
        String text = CommandRun.of(words.toArray(new String[0])).out();
        boolean measures = text.contains("To know better");
        assertThat(text.lines().count()).as(text).isBetween(5L, (long)
                (measures ? WITH_A_MEASUREMENT : FirstAnswer.MOST_LINES));
        assertThat(text.lines()).allMatch(row -> row.length() <= 80).noneMatch(row -> row.endsWith(" "));
        assertThat(text).contains("Caution: ");
    }

    /** Cautions stand last and whole, the first note always; what is left out is counted, and stands in the whole. */
    @Test
    void notesGiveWayToCautions() {
        List<Notice> notices = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            notices.add(new Notice("note", "note " + i));
        }
        notices.add(2, new Notice("sharp", "mind the edge", Notice.Kind.CAUTION));
        notices.add(Notice.remark("aside", "an aside"));
        Notice said = new Notice("said", "said above");
        notices.add(said);
        String rows = "row\n".repeat(16);
        FirstAnswer answer = FirstAnswer.of(rows, notices, Optional.of(said), "Caution: slippery\n");
        assertThat(answer.text())
                .isEqualTo(rows
                        + "\nNote: note 0\nNote: and 5 more: --explain\nCaution: mind the edge\nCaution: slippery\n");
        assertThat(answer.whole())
                .isEqualTo(rows
                        + "\nNote: note 0\nNote: note 1\nNote: note 2\nNote: note 3\nNote: note 4\nNote: note 5\n"
                        + "Caution: mind the edge\nCaution: slippery\n");
        FirstAnswer all = FirstAnswer.of("row\n".repeat(10), notices, Optional.of(said), "");
        assertThat(all.text()).contains("Note: note 5\nCaution: mind").doesNotContain("more", "aside", "said");
        assertThat(FirstAnswer.of("row\n", List.of(), Optional.empty(), "").text())
                .isEqualTo("row\n");
    }
}
