package org.fizzhull.cli.deciding;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.decide.MadePiece;
import org.fizzhull.decide.compare.ComparedPiece;
import org.fizzhull.decide.compare.Comparison;
import org.fizzhull.shape.kind.Filled;

/** How the rows of a comparison are called. */
public final class CompareWords {
    private static final Pattern FORM_AND_SIZE = Pattern.compile("[a-z]+ \\d+ mm");

    private CompareWords() {}

    /** The row by the name of its mould, and of its recipe where there are several: {@code dome 80 mm, Sea foam}. */
    public static String name(Comparison comparison, ComparedPiece row) {
        return mould(row) + (severalRecipes(comparison) ? " with " + recipe(row) : "");
    }

    /** The mould by its name, or by its shape where it has none. */
    public static String mould(ComparedPiece row) {
        if (!row.mould().named() && row.shape().bare() instanceof Filled filled) {
            return "mould of " + NumberText.grams(filled.water()) + " of water";
        }
        String piece = ShapeWords.piece(row.shape());
        if (!row.mould().named()) {
            return piece.substring(piece.indexOf(' ') + 1);
        }
        // a name that is a form and a size, as in the built-in list, is told in the units of the text
        String name = row.mould().name();
        return FORM_AND_SIZE.matcher(name).matches() ? NumberText.joined(name) : name;
    }

    /** The recipe by its name. */
    public static String recipe(ComparedPiece row) {
        return row.recipe().map(recipe -> recipe.name()).orElse("no recipe");
    }

    /** Whether the recipe must be said. */
    public static boolean severalRecipes(Comparison comparison) {
        return comparison.rows().stream().map(CompareWords::recipe).distinct().count() > 1;
    }

    /** What is special, in words. */
    public static List<String> special(ComparedPiece row) {
        List<String> words = new ArrayList<>();
        for (MadePiece.Special special : row.made().special()) {
            words.add(special.words());
        }
        return words;
    }
}
