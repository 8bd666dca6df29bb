package org.fizzhull.forecast;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.NoticeSearch;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.kind.Sphere;

/** A ball of a mix with citric acid, filled and dried in an ordinary room: what tests of drying forecasts ask about. */
final class DriedBall {
    static final double HOUR = 3600;
    static final double DAY = 24 * HOUR;
    static final Sphere BALL = Sphere.ofDiameter(0.065);
    static final Blend MIX = mix("8 g");
    static final RoomAir ROOM = RoomAir.of(Units.celsius(21), 0.5);
    static final DryPredictor CENTRAL = DryPredictor.standard().with(new Sampling(1, 0));
    static final DryPredictor DRAWN = DryPredictor.standard().with(new Sampling(1, 128));

    private DriedBall() {}

    static Blend mix(String water) {
        return Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid anhydrous", "150 g")
                .dry("corn starch", "60 g")
                .wet("water", water)
                .build());
    }

    static DryForecast forecast(DryPredictor predictor, DryingConditions conditions) {
        return predictor.forecast(BALL, filled(conditions));
    }

    static Making filled(DryingConditions conditions) {
        return new Moulded.Filled(MIX, 0.146, Optional.empty(), conditions.plan(BALL));
    }

    static DryingConditions open(double seconds) {
        return DryingConditions.open(ROOM, seconds);
    }

    static List<String> codes(DryForecast forecast) {
        return NoticeSearch.codes(forecast.notices());
    }

    static String text(DryForecast forecast, String code) {
        return NoticeSearch.text(forecast.notices(), code);
    }
}
