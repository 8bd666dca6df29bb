package org.fizzhull.forecast.question;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.forecast.maker.MakingPriors;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.prior.Factor;

/**
 * The rows that matter for a question, in the order in which they are drawn:
 *
 * <ol>
 *   <li>its own rows of one column: scale, hand, press, mould, bath;
 *   <li>those of the table: fizzing, gas, wet skin;
 *   <li>its own rows of many columns, each of which counts for little: the powders' own densities, the recipe's lines;
 *   <li>drying;
 *   <li>what oil, foaming powder or starch in the mix and a measured depth profile add.
 * </ol>
 *
 * <p>The first coordinates of a Sobol point are its most even ones, so what counts most stands first; and what is asked
 * only of some answers about a piece stands last, so that all of them draw the same piece. Stateless; for {@link Factors}.
 */
final class AskedRows {
    private AskedRows() {}

    /** The rows of a question, those of a table in the place of the usual ones. */
    static List<Factor> of(Question question, Factors table) {
        List<Factor> brought = new ArrayList<>(StandardPriors.ofQuestion(question));
        table.sizeOf(question.shape())
                .ifPresent(size -> brought.replaceAll(row -> row.input() == size.input() ? size : row));
        List<Factor> own = table.over(brought).rows();
        List<Factor> asked = new ArrayList<>();
        List<Factor> many = new ArrayList<>();
        List<Factor> drying = new ArrayList<>();
        for (Factor row : own) {
            List<Factor> stage = row.input().isOfDrying() ? drying : row.columns() > 1 ? many : asked;
            stage.add(row);
        }
        if (!question.stillWater()) {
            asked.addAll(ofTable(table, own, question.making() instanceof Making.Weighed));
        }
        asked.addAll(many);
        asked.addAll(drying);
        asked.replaceAll(row -> MakingPriors.possible(row, question.making().plan()));
        if (!question.stillWater()) {
            List<Factor> last =
                    new ArrayList<>(StandardPriors.ofMix(question.making().mix()));
            last.addAll(StandardPriors.ofForm(question.shape()));
            addMissing(table.over(last).rows(), asked);
        }
        return asked;
    }

    /** Adds the rows of inputs that are not among the others. */
    static void addMissing(List<Factor> rows, List<Factor> to) {
        for (Factor row : rows) {
            if (isMissing(row, to)) {
                to.add(row);
            }
        }
    }

    /**
     * The rows of a table that a question does not bring: what is known of making only for a piece that is made, and of
     * drying none, since a piece that dries brings those rows itself.
     */
    private static List<Factor> ofTable(Factors table, List<Factor> own, boolean finished) {
        List<Factor> left = new ArrayList<>();
        for (Factor row : table.rows()) {
            boolean idle =
                    row.input().isOfDrying() || (row.input().isOfMaking() && (finished || table.holds(row.input())));
            if (isMissing(row, own) && !idle) {
                left.add(row);
            }
        }
        return left;
    }

    private static boolean isMissing(Factor row, List<Factor> among) {
        for (Factor other : among) {
            if (other.input() == row.input()) {
                return false;
            }
        }
        return true;
    }
}
