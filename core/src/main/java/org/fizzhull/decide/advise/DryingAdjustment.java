package org.fizzhull.decide.advise;

import org.fizzhull.decide.Design;
import org.fizzhull.decide.advise.Change.Step.Setting;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Unit;

/**
 * Drying for days longer, or in a drier room by five per cent of relative humidity.
 *
 * @param kind {@code DRYING_TIME} or {@code ROOM_HUMIDITY}
 * @param conditions drying as it is planned
 */
record DryingAdjustment(Change.Step.Kind kind, DryingConditions conditions) implements Adjustment {
    /** Seconds in a day: a level of drying time. */
    private static final double DAY = 86_400;
    /** Rungs of drying time. */
    private static final int DAYS = 7;
    /** A level of humidity, 0 to 1. */
    private static final double FIVE_PERCENT = 0.05;

    /** Drier air than this no home keeps for days (common practice, no source). */
    private static final double DRIEST = 0.30;

    @Override
    public int levels() {
        return kind == Change.Step.Kind.DRYING_TIME
                ? DAYS
                : (int) Math.floor((conditions.air().humidity() - DRIEST) / FIVE_PERCENT + 1e-9);
    }

    @Override
    public double effort(int level) {
        // assumed: a day, or five per cent of humidity, against grams in a hundred of the fill
        return kind == Change.Step.Kind.DRYING_TIME ? 2.0 * level : 3.0 * level;
    }

    @Override
    public Changed at(Design design, int level) {
        if (kind == Change.Step.Kind.DRYING_TIME) {
            // so many days more in the open
            double open = conditions.open();
            double longer = open + level * DAY;
            Change.Step step =
                    new Change.Step(kind, "", new Setting.Amount(open, Unit.DAY), new Setting.Amount(longer, Unit.DAY));
            return new Changed(design.dried(conditions.openFor(longer)), step);
        }
        // drier air, all else as it was
        RoomAir air = conditions.air();
        double drier = air.humidity() - level * FIVE_PERCENT;
        Change.Step step = new Change.Step(
                kind, "", new Setting.Amount(air.humidity(), Unit.PERCENT), new Setting.Amount(drier, Unit.PERCENT));
        return new Changed(design.dried(conditions.in(air.withHumidity(drier))), step);
    }
}
