package org.fizzhull.cli.making;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fizzhull.cli.text.NoticeText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.Table;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.Property;
import org.fizzhull.recipe.Recipe;

/** Ingredients with their values, spreads and sources. */
public final class IngredientsText {
    private static final int MOST_PAGES = 3;

    private IngredientsText() {}

    /** All by what they do. */
    public static String list(List<Ingredient> rows) {
        return rows.size() + " ingredients by what they do\n\n" + byRole(rows) + '\n'
                + Table.paragraph("One of them with its values and sources: fizzhull ingredients kaolin");
    }

    private static Table byRole(List<Ingredient> rows) {
        Map<String, StringBuilder> byRole = new LinkedHashMap<>();
        for (Ingredient row : rows) {
            String role = row.role().words();
            StringBuilder names = byRole.get(role);
            if (names == null) {
                byRole.put(role, new StringBuilder(row.name()));
            } else {
                names.append(", ").append(row.name());
            }
        }
        Table table = new Table();
        byRole.forEach((role, names) -> table.row(role, names.toString()));
        return table;
    }

    /**
     * What a recipe is made of, by what it does, and a page of each ingredient of its own.
     *
     * @param sources whether each value is told with its source
     */
    public static String ofRecipe(Recipe recipe, List<Ingredient> own, List<Notice> notices, boolean sources) {
        List<Ingredient> used =
                recipe.parts().stream().map(Recipe.Part::ingredient).toList();
        StringBuilder out = new StringBuilder(recipe.name())
                .append(": ")
                .append(used.size())
                .append(" ingredients by what they do\n\n")
                .append(byRole(used))
                .append('\n');
        for (Notice notice : notices) {
            out.append(NoticeText.paragraph(notice));
        }
        if (own.isEmpty()) {
            out.append(Table.paragraph("It has no ingredients of its own; all values are the table's."));
        }
        for (Ingredient described : own) {
            out.append("\nYour own ").append(page(described, sources));
        }
        return out.toString();
    }

    /**
     * Pages of a few, or a list of many.
     *
     * @param sources whether each value is told with its source
     */
    public static String of(List<Ingredient> rows, List<Notice> notices, boolean sources) {
        StringBuilder out = new StringBuilder();
        for (Notice notice : notices) {
            out.append(Table.paragraph((rows.isEmpty() ? "" : "Note: ") + notice.text()));
        }
        if (rows.size() > MOST_PAGES) {
            return out.append(list(rows)).toString();
        }
        for (Ingredient row : rows) {
            out.append(out.length() > 0 ? "\n" : "").append(page(row, sources));
        }
        return out.toString();
    }

    private static String page(Ingredient row, boolean sources) {
        StringBuilder out = new StringBuilder(row.name() + ": " + row.role().words() + '\n');
        Table table = new Table();
        if (!row.otherNames().isEmpty()) {
            table.row("also called", String.join(", ", row.otherNames()));
        }
        row.values().forEach((property, datum) -> table.row(property.key(), value(property, datum, sources)));
        if (!row.allergen().isEmpty()) {
            table.row("allergen", row.allergen());
        }
        if (!row.remark().isEmpty()) {
            table.row("remark", row.remark());
        }
        out.append(table);
        if (!row.caution().isEmpty()) {
            out.append(Table.paragraph("Caution: " + row.caution()));
        }
        return out.toString();
    }

    private static String value(Property property, Property.Datum datum, boolean sources) {
        boolean share = property.unit().equals("share");
        double scale = share ? 100 : 1 / property.toSi();
        String unit = property.unit().isEmpty() ? "" : NumberText.UNIT + (share ? "%" : property.unit());
        String spread = datum.sigma() == 0 ? "" : " +- " + Decimals.text(datum.sigma() * scale, 2);
        return Decimals.text(datum.value() * scale, 4) + spread + unit
                + (sources ? "; " + datum.source().citation() : "") + " ["
                + datum.source().seen().words() + ']';
    }
}
