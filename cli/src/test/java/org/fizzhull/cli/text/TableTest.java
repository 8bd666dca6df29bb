package org.fizzhull.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** How lines are broken, by the width of a window of 80. */
class TableTest {
    /** What must stay in one piece has room for 80 characters less two of indent, though its column leaves 67. */
    @Test
    void whatHasNoRoomAtItsColumnBeginsBeforeIt() {
        String whole = "x".repeat(70);
        StringBuilder out = new StringBuilder();

        Table.indented(out, 13, "Type " + whole + " then");

        assertThat(Table.plain(out.toString()).lines())
                .containsExactly(" ".repeat(13) + "Type", " ".repeat(10) + whole, " ".repeat(13) + "then");
    }
}
