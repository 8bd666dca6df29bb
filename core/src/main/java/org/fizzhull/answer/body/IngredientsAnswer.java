package org.fizzhull.answer.body;

import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.Property;

/**
 * Ingredients with their values, spreads and sources, as the object of the command {@code ingredients}: {@code rows} with
 * {@code name}, {@code aliases}, {@code role}, {@code caution}, {@code allergen}, {@code remark} (null where there is none) and
 * {@code values}: {@code property}, {@code unit}, {@code value}, {@code standard_deviation}, {@code source}, {@code seen} (how the
 * source was met). Values stand in the unit that people write ({@link Property#unit}), named beside each. Immutable.
 *
 * @param rows ingredients, in the order of the table
 * @param notices what the reader must know
 */
public record IngredientsAnswer(List<Ingredient> rows, List<Notice> notices) implements AnswerBody {
    /**
     * Copies the lists.
     *
     * @param rows ingredients, in the order of the table
     * @param notices what the reader must know
     */
    public IngredientsAnswer {
        Given.all("rows, notices", rows, notices);
        rows = List.copyOf(rows);
        notices = List.copyOf(notices);
    }

    @Override
    public String command() {
        return "ingredients";
    }

    @Override
    public void keys(AnswerWriter to) {
        to.objects(
                "rows",
                rows,
                row -> to.text("name", row.name())
                        .texts("aliases", row.otherNames())
                        .text("role", row.role().words())
                        .filled("caution", row.caution())
                        .filled("allergen", row.allergen())
                        .filled("remark", row.remark())
                        .objects("values", row.values().entrySet(), value -> {
                            Property property = value.getKey();
                            Property.Datum datum = value.getValue();
                            to.text("property", property.key())
                                    .text("unit", property.unit())
                                    .number("value", datum.value() / property.toSi())
                                    .number("standard_deviation", datum.sigma() / property.toSi())
                                    .text("source", datum.source().citation())
                                    .text("seen", datum.source().seen().words());
                        }));
    }
}
