package org.fizzhull.answer.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.PressForecast;
import org.fizzhull.quantity.check.Given;

/**
 * What a mix does under a press, and what the piece becomes by drying. Immutable.
 *
 * @param forecast the mix and, where one was asked for, the piece
 * @param mould whether a shape was named; else a 65 mm ball stands in for one
 * @param dried what the piece becomes by drying; empty where no drying or no piece was asked for
 * @param dryingAsked whether drying options were given
 */
public record PressReport(PressForecast forecast, boolean mould, Optional<DryForecast> dried, boolean dryingAsked) {
    /**
     * Refuses what is missing.
     *
     * @param forecast the mix and, where one was asked for, the piece
     * @param mould whether a shape was named; else a 65 mm ball stands in for one
     * @param dried what the piece becomes by drying; empty where no drying or no piece was asked for
     * @param dryingAsked whether drying options were given
     */
    public PressReport {
        Given.all("forecast, dried", forecast, dried);
    }

    /** For drying options without a piece to dry. */
    private static final Notice NO_PIECE = new Notice(
            "no-piece-to-dry",
            "Drying is computed for a piece: give a press or a fill as well. The air alone counts here for how much water is too much.");

    /** {@return what the reader must know of mix, piece and drying} */
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>(forecast.notices());
        Effervescence.of(forecast.blend().moles()).notice().ifPresent(notices::add);
        if (dryingAsked && dried.isEmpty()) {
            notices.add(NO_PIECE);
        }
        dried.ifPresent(forecast -> DriedKeys.addNotices(notices, forecast));
        return notices;
    }
}
