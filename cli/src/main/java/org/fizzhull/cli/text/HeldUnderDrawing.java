package org.fizzhull.cli.text;

import java.util.List;

/**
 * How a piece is held under water on a kitchen scale, drawn with letters: below the options of {@code float --help} and at the head
 * of the sheet for trials that {@code start} writes. Lines of at most 78 characters, without the commas and semicolons at which a
 * spreadsheet would cut them.
 */
public final class HeldUnderDrawing {
    /** The lines, a heading first. */
    public static final List<String> LINES = List.of(
            "How to hold a piece under water",
            "",
            "          |   |            wire hoop held by hand: it touches",
            "    |     |   |     |      neither bowl nor bottom",
            "    |~~~~~|~~~|~~~~~|      water as warm as the bath",
            "    |     |   |     |",
            "    |    (     )    |      the dry piece weighed before",
            "    |    (     )    |      wholly under",
            "    |               |",
            "     \\_____________/       bowl",
            "    [     151 g     ]      kitchen scale tared with bowl and water",
            "",
            "Read after 2 to 5 s. Better: film the display and read it after 2 and 4 and 6",
            "and 8 and 10 s. Above the weight before: it floats.",
            "Our own proposal. It was checked by simulation only. Wet pieces and floors are",
            "slippery. Keep the scale dry and small children away from the warm water.");

    private HeldUnderDrawing() {}
}
