package org.fizzhull.drying.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.fizzhull.drying.Mixes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a piece may dry: by what the figures mean, and the ranges that the refusals and comments state. */
class PlaceLimitsTest {
    /** By meaning: a room has air in it and a piece; nothing is exchanged or taken backwards; humidity is 0 to 1. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 0, 0.5, 1",
        "2e6, 0, 0, 0.5, 1",
        "25, -1e-9, 0, 0.5, 1",
        "25, 1.01, 0, 0.5, 1",
        "25, 0, -1e-9, 0.5, 1",
        "25, 0, 1.01, 0.5, 1",
        "25, 0, 0, -0.01, 1",
        "25, 0, 0, 1.01, 1",
        "25, 0, 0, 0.5, 0",
        "NaN, 0, 0, 0.5, 1",
        "25, NaN, 0, 0.5, 1",
        "25, 0, NaN, 0.5, 1",
        "25, 0, 0, NaN, 1"
    })
    void aRoomThatCannotBeIsRefused(double volume, double changes, double taken, double setPoint, int pieces) {
        assertThatThrownBy(() -> new ClosedRoom(volume, changes, taken, setPoint, pieces))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** By meaning: a tight room, one whose air changes every second, and a set point of dry or of saturated air exist. */
    @ParameterizedTest
    @CsvSource({"1e6, 0, 0, 0, 1", "1e6, 1, 1, 1, 2"})
    void theEndsOfARoomAreAllowed(double volume, double changes, double taken, double setPoint, int pieces) {
        ClosedRoom room = new ClosedRoom(volume, changes, taken, setPoint, pieces);
        assertThat(room.setPoint()).isEqualTo(setPoint);
        assertThat(room.pieces()).isEqualTo(pieces);
    }

    /** By the ranges that the refusals state: above 0 s to 1e9 s, a gap of 0 to 0.1 m. */
    @Test
    void lengthOfAPhaseAndItsGap() {
        DryingPhase phase = Mixes.open(0.5, 1);
        assertThat(phase.lasting(1e9).duration()).isEqualTo(1e9);
        assertThat(phase.in(Wrap.NONE, 0.1).gap()).isEqualTo(0.1);
        for (double wrong : new double[] {0, -1, 1.0001e9, Double.NaN}) {
            assertThatThrownBy(() -> phase.lasting(wrong)).isInstanceOf(IllegalArgumentException.class);
        }
        for (double wrong : new double[] {-1e-9, 0.1001, Double.NaN}) {
            assertThatThrownBy(() -> phase.in(Wrap.NONE, wrong)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    /** By Rayleigh's principle c is at least 1 and for a ball just that; 3 is beyond any form. */
    @ParameterizedTest
    @ValueSource(doubles = {0.999, 3, Double.NaN})
    void aCorrectionOutsideItsRangeIsRefused(double wrong) {
        assertThatThrownBy(() -> new Opening(Mixes.BALL.profile(), wrong)).isInstanceOf(IllegalArgumentException.class);
    }

    /** By the contract of equals: the same profile and correction, and no other thing. */
    @Test
    void openingsAreEqualByWhatTheyHold() {
        Opening one = new Opening(Mixes.BALL.profile(), 1.1);
        Opening same = new Opening(Mixes.BALL.profile(), 1.1);
        assertThat(same).isEqualTo(one).hasSameHashCodeAs(one);
        assertThat(new Opening(Mixes.BALL.profile(), 1.2)).isNotEqualTo(one);
        assertThat(Opening.face(1e-4, 1e-2)).isNotEqualTo(new Opening(Mixes.BALL.profile(), 1));
        assertThat(one.equals((Object) "ball")).isFalse();
    }

    /** By hand: 1e-4 m3 behind 1e-2 m2 are 1 cm deep, and half of it is left at half the depth. */
    @Test
    void oneFaceIsASlab() {
        Opening face = Opening.face(1e-4, 1e-2);
        assertThat(face.profile().deepest()).isCloseTo(0.01, within(1e-15));
        assertThat(face.profile().volume(0.005)).isCloseTo(0.5e-4, within(1e-15));
        assertThat(face.profile().area(0.005)).isCloseTo(1e-2, within(1e-15));
        assertThatThrownBy(() -> Opening.face(0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Opening.face(1, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Every standing is found by its own word. */
    @ParameterizedTest
    @EnumSource
    void aStandingIsFoundByItsWord(Standing standing) {
        assertThat(Standing.named(standing.word())).contains(standing);
    }

    /** By meaning: a film has no thickness below 0 and passes nothing backwards; a centimetre is no film. */
    @ParameterizedTest
    @CsvSource({"-1e-6, 1e-15", "0.01, 1e-15", "1e-5, -1e-15", "1e-5, 1e-8", "NaN, 1e-15", "1e-5, NaN"})
    void aWrapThatCannotBeIsRefused(double thickness, double permeability) {
        assertThatThrownBy(() -> new Wrap("film", thickness, permeability, false, ""))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** By the definition of P: P R_v T/l at 38 C, 1e-15 x 461.52 x 311.15/1e-5 m/s, and as much again through seals of 1. */
    @Test
    void conductanceOfAFilm() {
        Wrap film = new Wrap("film", 1e-5, 1e-15, false, "");
        double bare = 1e-15 * 461.52 * 311.15 / 1e-5;
        assertThat(film.conductance(311.15, 0)).isCloseTo(bare, withinPercentage(1e-6));
        assertThat(film.conductance(311.15, 3)).isCloseTo(4 * bare, withinPercentage(1e-6));
        assertThat(film.present()).isTrue();
        assertThat(Wrap.NONE.present()).isFalse();
        assertThat(new Wrap("tight", 1e-3, 0, true, "").conductance(311.15, 3)).isZero();
        assertThat(Wrap.named(film.name())).isEmpty();
    }
}
