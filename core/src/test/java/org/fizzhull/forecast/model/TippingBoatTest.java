package org.fizzhull.forecast.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fizzhull.evidence.NoticeSearch.codes;

import java.util.List;
import java.util.Optional;
import org.fizzhull.forecast.FizzPredictor;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.joint.JointForecast;
import org.fizzhull.forecast.joint.JointPredictor;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.question.Question.IntoBath;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.BoxBodies;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.meshed.MeshShape;
import org.fizzhull.uncertainty.Workers;
import org.junit.jupiter.api.Test;

/**
 * ANALYTIC: a box of width b that draws T stands where BM = b2/(12 T) is more than BG. A cup 30 mm wide and 90 mm high with walls of
 * 5 mm on a floor of 10 mm, of 65 g, draws 73 mm: BM is 1 mm, BG 41.7 less 36.4 mm. A tray 90 mm wide and 20 mm high of 90 g draws
 * 11 mm: BM is 60 mm.
 */
class TippingBoatTest {
    private static final MeshShape CUP = hollow(15, 90, 10, 10);
    private static final MeshShape TRAY = hollow(45, 20, 40, 6);
    private static final Factors FACTORS = Factors.standard();

    private static MeshShape hollow(double half, double height, double inner, double floor) {
        BoxBodies box = new BoxBodies()
                .add(-half, -half, 0, half, half, height)
                .take(-inner, -inner, floor, inner, inner, height);
        // how it fizzes away is no matter here: as a bowl does
        return MeshShape.of("a.stl", "mm", box.mesh(), Bowl.ofDiameterAndWall(0.09, 0.015)::depthProfile);
    }

    @Test
    void whatTipsIsJudgedAsDropped() {
        Question cup = Question.weighed(CUP, 0.065);
        assertThat(cup.into()).isEqualTo(IntoBath.PLACED);
        assertThat(TippingBoat.judged(cup, FACTORS)).isEqualTo(cup.into(IntoBath.DROPPED));
        Question tray = Question.weighed(TRAY, 0.09);
        assertThat(TippingBoat.judged(tray, FACTORS)).isSameAs(tray);
        Question dropped = cup.into(IntoBath.DROPPED);
        assertThat(TippingBoat.judged(dropped, FACTORS)).isSameAs(dropped);
        // 81 cm3 of water are 80.4 g: a heavier cup fills in each draw by itself
        Question heavy = Question.weighed(CUP, 0.0815);
        assertThat(TippingBoat.judged(heavy, FACTORS)).isSameAs(heavy);
        // in brine of a tenth more density the cup draws less, and tips as well
        Question brine = cup.in(Bath.at(Units.celsius(38)).withSalt(10));
        assertThat(TippingBoat.judged(brine, FACTORS).into()).isEqualTo(IntoBath.DROPPED);
    }

    /** Every answer says that it judged the boat as dropped, and is that of the dropped one. */
    @Test
    void everyAnswerSaysSo() {
        Blend mix = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));
        Question cup = Question.of(CUP, new Making.Weighed(0.065, Optional.empty(), Optional.of(mix)))
                .into(IntoBath.PLACED);
        Question tray = Question.of(TRAY, new Making.Weighed(0.09, Optional.empty(), Optional.of(mix)))
                .into(IntoBath.PLACED);
        FloatPredictor floats = FloatPredictor.standard().with(new Sampling(1, 0));
        FizzPredictor fizz = FizzPredictor.standard().with(new Sampling(1, 0));
        JointPredictor joint = JointPredictor.standard().with(new Sampling(1, 128));
        Forecast tipped = floats.forecast(cup);
        assertThat(codes(tipped.notices())).contains("boat-tips").doesNotContain("boat");
        assertThat(tipped.question().into()).isEqualTo(IntoBath.DROPPED);
        Forecast dropped = floats.forecast(cup.into(IntoBath.DROPPED));
        assertThat(tipped.spareAtDrop()).isEqualTo(dropped.spareAtDrop());
        assertThat(codes(dropped.notices())).doesNotContain("boat-tips");
        assertThat(floats.check(cup).floats().spareAtDrop())
                .isEqualTo(tipped.spareAtDrop().median());
        assertThat(codes(floats.forecast(tray).notices())).contains("boat").doesNotContain("boat-tips");
        assertThat(codes(fizz.forecast(cup).notices())).contains("boat-tips");
        assertThat(codes(fizz.forecast(tray).notices())).doesNotContain("boat-tips");
        List<JointForecast> both = joint.forecast(List.of(cup, tray), List.of(), Workers.Progress.SILENT);
        assertThat(codes(both.get(0).notices())).contains("boat-tips");
        assertThat(codes(both.get(1).notices())).doesNotContain("boat-tips");
        assertThat(both.get(0).baths().get(0).into()).isEqualTo(IntoBath.DROPPED);
        assertThat(both.get(1).baths().get(0).into()).isEqualTo(IntoBath.PLACED);
    }
}
