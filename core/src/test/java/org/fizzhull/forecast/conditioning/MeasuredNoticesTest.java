package org.fizzhull.forecast.conditioning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.NoticeSearch;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.DroppedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.junit.jupiter.api.Test;

/** BY DEFINITION: which sentence is told of which measurement, and its numbers as a person reads them (BY HAND). */
class MeasuredNoticesTest {
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final Question QUESTION = Question.weighed(BALL, 0.142);
    private static final Making FILLED = new Moulded.Filled(
            Blend.of(ExampleRecipes.lemon(IngredientTable.standard())),
            0.146,
            Optional.empty(),
            DryingConditions.open(RoomAir.of(Units.celsius(21), 0.5), 6 * 86400.0)
                    .plan(BALL));

    private static List<Notice> told(Observations seen) {
        return MeasuredNotices.assumptions(QUESTION, seen);
    }

    private static List<String> codes(Observations seen) {
        return NoticeSearch.codes(told(seen));
    }

    private static String text(Observations seen, String code) {
        return NoticeSearch.text(told(seen), code);
    }

    @Test
    void eachMeasurementSaysAsWhatItIsTaken() {
        Observations none = Observations.none();
        assertThat(codes(none)).isEmpty();
        assertThat(codes(none.fizzed(TimedPiece.fizzed(200)))).containsExactly("measured-fizz-as");
        assertThat(codes(none.rose(TimedPiece.rose(95)))).containsExactly("measured-rise-as", "measured-rise-any-size");
        assertThat(codes(none.rose(TimedPiece.rose(95).leaving(0.04))))
                .containsExactly("measured-rise-as", "measured-rise-left");
        assertThat(text(none.rose(TimedPiece.rose(95).leaving(0.04)), "measured-rise-left"))
                .contains("true to 5 mm");
        assertThat(codes(none.held(HeldPiece.of(0.15, 5)))).containsExactly("measured-lift-as");
        assertThat(codes(none.weighed(WeighedPiece.byHand(0.15, 3e4)))).containsExactly("weighed-as");
        assertThat(codes(none.dropped(DroppedPiece.of(DroppedPiece.Result.SANK, 0.15))))
                .containsExactly("measured-result-as");
        DryLog log = new DryLog(List.of(new DryLog.Series("A", List.of(0.0, 86400.0), List.of(0.15, 0.14), 1e-4)));
        assertThat(codes(none.dried(new Observations.LoggedPieces(BALL, FILLED, log))))
                .containsExactly("drying-log-as");
    }

    /** 2 to 5 s is when a reading says most. */
    @Test
    void aReadingTooEarlyOrTooLateIsTold() {
        Observations none = Observations.none();
        for (double seconds : new double[] {2, 3.5, 5}) {
            assertThat(codes(none.held(HeldPiece.of(0.15, seconds)))).doesNotContain("measured-lift-untimely");
        }
        for (double seconds : new double[] {1.9, 5.1}) {
            assertThat(codes(none.held(HeldPiece.of(0.15, seconds)))).contains("measured-lift-untimely");
        }
    }

    @Test
    void ofPiecesAlikeItIsToldOnce() {
        TimedPiece like = TimedPiece.fizzed(200);
        assertThat(codes(Observations.none().fizzed(like).fizzed(like))).containsExactly("measured-fizz-as");
        assertThat(codes(Observations.none().fizzed(like).fizzed(like.weighing(0.15))))
                .containsExactly("measured-fizz-as", "measured-fizz-as");
    }

    /** By hand: 3 s and 3 % of 200 s are 6.7 s; 3 % of 4,000 s are 120 s, two minutes. */
    @Test
    void weightsAndSpreadsAreThoseOfThePiece() {
        Observations none = Observations.none();
        assertThat(text(none.fizzed(TimedPiece.fizzed(200)), "measured-fizz-as"))
                .contains("142 g", "true to 7 s");
        assertThat(text(none.fizzed(TimedPiece.fizzed(4000).weighing(0.1504)), "measured-fizz-as"))
                .contains("150.4 g", "true to 2 min");
        Question filled = Question.of(BALL, FILLED);
        assertThat(MeasuredNotices.assumptions(filled, none.fizzed(TimedPiece.fizzed(200))))
                .singleElement()
                .satisfies(notice -> assertThat(notice.text()).contains("a piece of this weight"));
        assertThat(text(none.held(HeldPiece.of(0.15, 5)), "measured-lift-as"))
                .contains("The reading under water", "142 g", "true to 2 g")
                .doesNotContain("half of its variance");
        assertThat(text(none.held(HeldPiece.of(0.15, 3).then(0.151, 5)), "measured-lift-as"))
                .contains("The 2 readings under water", "half of its variance");
    }

    @Test
    void aWeightBesideALoadIsThatOfTheMixAlone() {
        WeighedPiece piece = WeighedPiece.byHand(0.15, 3e4);
        Loaded loaded = Loaded.with(BALL, new Inset(0.01, 5e-6));
        assertThat(MeasuredNotices.weighed(piece, BALL).text())
                .contains("this mould")
                .doesNotContain("on top");
        assertThat(MeasuredNotices.weighed(piece, loaded).text()).contains("this mould", "that of the mix alone");
        assertThat(MeasuredNotices.weighed(piece.in(BALL), loaded).text())
                .contains("its mould")
                .doesNotContain("on top");
    }

    /** 89.4 s is told in seconds, 90 s and 97 s in minutes to a tenth. */
    @Test
    void timesInSecondsOrMinutes() {
        Interval expected = new Interval(95, 89.4, 97);
        assertThat(MeasuredNotices.fizzSurprise(60, expected).code()).isEqualTo("measured-fizz-unexpected");
        assertThat(MeasuredNotices.fizzSurprise(90, expected).text())
                .contains("A fizz time of 1.5 min", "(89 s to 1.6 min)");
        assertThat(MeasuredNotices.riseSurprise(30.6, expected).text())
                .contains("A rise after 31 s", "89 s to 1.6 min");
        assertThat(MeasuredNotices.riseSurprise(30, expected).code()).isEqualTo("measured-rise-unexpected");
        assertThat(MeasuredNotices.floats(TimedPiece.rose(95))).hasMessageContaining("1.6 min until it came up");
    }

    @Test
    void surprisesWithTheirNumbers() {
        Interval masses = new Interval(0.14, 0.13, 0.15);
        assertThat(MeasuredNotices.weightSurprise(0.1604, masses).text()).contains("160.4 g", "130 g to 150 g");
        assertThat(MeasuredNotices.weightSurprise(0.16, masses).code()).isEqualTo("weighed-unexpected");
        assertThat(MeasuredNotices.liftSurprise(0.1604, masses).text()).contains("160.4 g", "130 g to 150 g");
        assertThat(MeasuredNotices.liftSurprise(0.16, masses).code()).isEqualTo("measured-lift-unexpected");
        assertThat(MeasuredNotices.hardlyRises(0.013).text()).contains("1.3 of 100");
        assertThat(MeasuredNotices.hardlyRises(0.01).code()).isEqualTo("measured-rise-unexpected");
        assertThat(MeasuredNotices.few(57.6).text()).contains("worth 58 independent ones");
        assertThat(MeasuredNotices.few(57).code()).isEqualTo("few-draws-agree");
    }

    @Test
    void refusalsSayWhatConflicts() {
        assertThat(MeasuredNotices.notPressed().field()).isEqualTo("weighed");
        assertThat(MeasuredNotices.stillWater().code()).isEqualTo("conflict");
        assertThat(MeasuredNotices.notDried("a log of another mix")).hasMessageContaining("a log of another mix");
    }
}
