package org.fizzhull.forecast.joint;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.model.StillModel;
import org.fizzhull.forecast.model.VoyageModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.sampling.Model;

/**
 * One piece in several baths as a function of the common columns: made once a draw, then put into each bath. Writes the
 * columns of {@link VoyageModel} for each bath and those of the making beside them.
 *
 * <p>The inputs come as uniform numbers, one for each common column; this question's own are picked out and turned into
 * values by its own priors, so that two questions with different priors of one input still share its rank. One instance
 * serves one thread.
 */
final class JointModel implements Model {
    /** What it weighed out of the mould, kg. */
    static final int DAMP = 0;

    /** When it is ready, s. */
    static final int READY = 1;

    /** Number of columns of the making. */
    static final int MAKING_WIDTH = 2;

    /** Makes the piece of a draw once for all baths. */
    private final TimedMaker maker;
    /** The model of each bath, all with that maker. */
    private final List<Model> baths = new ArrayList<>();
    /** Priors of this question's columns. */
    private final List<Prior> priors;
    /** Where each of them stands among the common columns. */
    private final int[] places;
    /** Scratch: values of this question's columns, SI. */
    private final double[] values;

    /** The uniform numbers of this question's columns. */
    private final double[] own;

    /** Columns of the making: {@link #DAMP} and {@link #READY}, one place for each draw. */
    private final double[][] making;

    /**
     * @param prepared the question in each bath, all of the same rows
     * @param places of the question's columns among the common ones
     * @param columns for each bath
     * @param making columns of what is the same for all baths
     */
    JointModel(List<PreparedQuestion> prepared, int[] places, double[][][] columns, double[][] making) {
        maker = new TimedMaker(prepared.get(0).question());
        for (int i = 0; i < columns.length; i++) {
            PreparedQuestion in = prepared.get(i);
            DropModel drop = new DropModel(in, maker);
            baths.add(
                    in.question().stillWater()
                            ? new StillModel(in, drop, columns[i])
                            : new VoyageModel(in, drop, columns[i]));
        }
        priors = prepared.get(0).factors().priors();
        values = new double[places.length];
        own = new double[places.length];
        this.places = places;
        this.making = making;
    }

    /** The spare at the drop in the first bath, kg. */
    @Override
    public double at(double[] uniforms) {
        // all uniform numbers first: inputs drawn together read one another's
        for (int i = 0; i < values.length; i++) {
            own[i] = uniforms[places[i]];
        }
        for (int i = 0; i < values.length; i++) {
            values[i] = priors.get(i).quantile(own, i);
        }
        maker.nextDraw();
        double first = baths.get(0).at(values);
        for (int i = 1; i < baths.size(); i++) {
            baths.get(i).at(values);
        }
        return first;
    }

    @Override
    public void keep(int draw) {
        for (Model bath : baths) {
            bath.keep(draw);
        }
        making[DAMP][draw] = maker.damp();
        making[READY][draw] = maker.ready();
    }
}
