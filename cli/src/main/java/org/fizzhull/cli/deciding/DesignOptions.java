package org.fizzhull.cli.deciding;

import java.util.ArrayList;
import java.util.Optional;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.DryingOptions;
import org.fizzhull.decide.Design;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.recipe.Blend;

/** The design behind a question: what {@code advise} and {@code why} change about it. The options are those of {@code float}. */
final class DesignOptions {
    private DesignOptions() {}

    static Design read(Arguments arguments, Question question) {
        Making making = question.making();
        Optional<DryingConditions> drying = DryingOptions.given(arguments)
                ? Optional.of(DryingOptions.read(arguments, DryingOptions.USUAL_DAYS, new ArrayList<>()))
                : Optional.empty();
        return new Design(
                making.mix().map(Blend::recipe),
                question.shape(),
                filling(making),
                making instanceof Making.Weighed ? Optional.empty() : drying,
                question.bath(),
                question.into(),
                question.stillWater(),
                question.measured(),
                question.scale());
    }

    private static Design.Filling filling(Making making) {
        if (making instanceof Moulded.Filled filled) {
            return new Design.Filling.Fill(filled.dampMass(), filled.hand());
        }
        if (making instanceof Moulded.Pressed pressed) {
            return new Design.Filling.Press(pressed.pressure(), pressed.pressSpread(), pressed.filling());
        }
        Making.Weighed weighed = (Making.Weighed) making;
        return new Design.Filling.Finished(weighed.mass(), weighed.hand(), weighed.dried());
    }
}
