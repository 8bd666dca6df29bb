package org.fizzhull.forecast.draw;

import org.fizzhull.pressing.powder.Powders;
import org.fizzhull.recipe.Blend;

/**
 * The mix of one draw: the powders' densities, and the amounts where the recipe gives a range. One serves one thread.
 *
 * <p>A recipe with exact amounts is blended once, when this is made; one with ranges anew for each draw.
 */
public final class MixedDraw {
    /** The mix by the recipe's middle amounts. */
    private final Blend blend;
    /** Its powders by the table's central densities. */
    private final Powders table;

    /**
     * Prepares the mixes of the draws of one blend.
     *
     * @param blend mix by the table's central values
     */
    public MixedDraw(Blend blend) {
        this.blend = blend;
        table = Powders.of(blend);
    }

    /**
     * {@return the mix of a draw; without a spread in the recipe only the densities differ}
     *
     * @param draw one draw of what is uncertain before the bath
     */
    public Mix of(MakingDraw draw) {
        if (draw.amounts().length == 0) {
            return new Mix(blend, table.with(blend, draw.densities()));
        }
        Blend weighed = Blend.of(blend.recipe().shifted(draw.amounts()));
        return new Mix(weighed, Powders.of(weighed).with(weighed, draw.densities()));
    }

    /**
     * A mix as a draw has it.
     *
     * @param blend powders and liquid by the amounts of the draw
     * @param powders the same powders with the densities of the draw
     */
    public record Mix(Blend blend, Powders powders) {}
}
