package org.fizzhull.drying.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.fizzhull.drying.Mixes;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.run.Drying;
import org.fizzhull.drying.run.Resolution;
import org.fizzhull.drying.run.RoomText;
import org.fizzhull.quantity.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A closed room with many pieces. */
class RoomTest {
    private static double ready(DryingPhase.ClosedRoom room) {
        return Drying.untilReady(
                        Mixes.starch(0.02, 0.1),
                        Mixes.open(0.5, 200).in(room),
                        DryingParameters.standard(),
                        Resolution.COARSE)
                .readyAfter()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** ANALYTIC: a hall with a gale is outdoors: one piece dries as if the air were given. */
    @Test
    void oneBallInAHallDriesAsInGivenAir() {
        double given = Drying.untilReady(
                        Mixes.starch(0.02, 0.1), Mixes.open(0.5, 60), DryingParameters.standard(), Resolution.COARSE)
                .readyAfter()
                .orElseThrow();
        assertThat(ready(new DryingPhase.ClosedRoom(1e5, 0.01, 0, 0.5, 1))).isCloseTo(given, withinPercentage(0.2));
    }

    /**
     * By the balance of vapour, as directions: 1,500 pieces give off more than half a change of 25 m3 an hour takes away until
     * they are dry, so that the room is damper than for one; a dehumidifier takes part of it.
     */
    @Test
    void aCrowdedRoomIsSlowAndADehumidifierHelps() {
        double one = ready(new DryingPhase.ClosedRoom(25, 0.5 / 3600, 0, 0.5, 1));
        double many = ready(new DryingPhase.ClosedRoom(25, 0.5 / 3600, 0, 0.5, 1500));
        double helped = ready(new DryingPhase.ClosedRoom(25, 0.5 / 3600, 2.0 / 86400, 0.45, 1500));
        assertThat(many).isGreaterThan(1.1 * one);
        assertThat(helped).isLessThan(many);
    }

    /**
     * ANALYTIC: in the steady state exchange carries what the dehumidifier takes: pieces dry, room under its set point.
     */
    @Test
    void theDehumidifierHoldsItsBalance() {
        var room = new DryingPhase.ClosedRoom(25, 0.5 / 3600, 100e-3 / 86400, 0.4, 10);
        var phase = Mixes.open(0.6, 2000).in(room);
        double end = Drying.run(Mixes.starch(0, 0.1), List.of(phase), Mixes.inert(), Resolution.COARSE)
                .last()
                .roomHumidity();
        double exchange = 25 * Mixes.room(0.5).saturationDensity() * 0.5 / 3600;
        double taken = 100e-3 / 86400 * Math.min(1, (end - 0.4) / 0.05);
        assertThat(exchange * (0.6 - end)).isCloseTo(taken, withinPercentage(1e-3));
    }

    /** By hand, from the units of the text; the set point of 50 % is the default. */
    @Test
    void readsARoom() {
        assertThat(RoomText.parse("room", "25 m3, 0.5 changes/h, dehumidifier 300 g/d", 40))
                .isEqualTo(new DryingPhase.ClosedRoom(25, 0.5 / 3600, 0.3 / 86400, 0.5, 40));
        assertThat(RoomText.parse("room", "8000 L", 1).volume()).isCloseTo(8, within(1e-12));
        assertThat(RoomText.parse("room", "25 m3, dehumidifier 0.3 L/day, 1 changes/h", 1))
                .isEqualTo(new DryingPhase.ClosedRoom(25, 1.0 / 3600, 0.3 / 86400, 0.5, 1));
    }

    /** By hand: 8 ft cubed is 512 ft3, 2 x 3 x 4 m are 24 m3; a comma behind a unit parts, one between digits does not. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "8 x 8 x 8 ft | Multiply length, width and height: 512 ft3.",
                "2 m x 3 m x 4 m | Multiply length, width and height: 24 m3.",
                "2x3×400 cm | Multiply length, width and height: 24 m3.",
                "0 x 3 x 4 m | Multiply length, width and height.",
                "25,5 m3,0.5 changes/h | Write 25.5 m3, with a point."
            })
    void mendsASize(String text, String hint) {
        assertThatThrownBy(() -> RoomText.parse("room", text, 1))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.hint()).isEqualTo(hint));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "25",
                "25 m3, often",
                "25 m3, x changes/h",
                "25 m3, NaN changes/h",
                "25 m3, -1 changes/h",
                "25 m3, 0.5 changes/week",
                "25 m3, dehumidifier 300 g",
                "25 m3, dehumidifier 300 K/d",
                "25 m3, dehumidifier 1 g/d, dehumidifier 2 g/d",
                "0 m3"
            })
    void refusesTheRest(String text) {
        assertThatThrownBy(() -> RoomText.parse("room", text, 1)).isInstanceOf(Refusal.class);
    }
}
