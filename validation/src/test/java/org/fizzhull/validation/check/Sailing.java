package org.fizzhull.validation.check;

import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.meshed.MeshShape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.validation.table.Inputs;
import org.fizzhull.voyage.FullVoyage;
import org.fizzhull.voyage.Release;
import org.fizzhull.voyage.VoyageForm;
import org.fizzhull.voyage.VoyageParameters;
import org.fizzhull.voyage.result.Voyage;

/**
 * Full voyages under plain conditions, which parameters alone set: a front of one speed, no clinging gas, no plume, no
 * water in the pores.
 */
record Sailing(Shape shape, Piece piece, Voyage voyage, double speed) {
    /** The voyage of a row: its shape, density, speed of the front, bath and way into it. */
    static Sailing of(Inputs in) {
        Shape shape = in.has("k") ? ball(in) : ShapeText.read(in.word("shape"));
        double speed = in.number("v_mm_per_min") / 60e3;
        double capacity = in.number("xi");
        Bath bath = Bath.at(in.celsius("t_C")).withDepth(in.number("depth_m"));
        Piece piece = new Piece(
                shape,
                in.number("density") * shape.volume(),
                new Piece.Makeup(Piece.Makeup.USUAL_TRUE_DENSITY, capacity));
        FizzParameters fizz = new FizzParameters(speed, 0, 0, 0, 1e-3, 0, 0, 1);
        Release release = in.has("release") ? Release.valueOf(in.word("release")) : Release.DROPPED;
        Voyage voyage = FullVoyage.of(VoyageForm.of(shape, release), bath).run(piece, fizz, new VoyageParameters(0, 0));
        return new Sailing(shape, piece, voyage, speed);
    }

    private static Shape ball(Inputs in) {
        return MeshShape.of("ball.stl", "m", Icosphere.of(in.millimetres("R_mm"), (int) in.number("k")));
    }

    Voyage.Series series() {
        return voyage.series();
    }

    /** What the first moments, half wet at the surface, set the clock back by, s. */
    double late() {
        int last = series().rows() - 1;
        return series().time()[last] - series().eroded()[last] / speed;
    }

    /** Carbon dioxide freed up to a row, mol. */
    double freed(int row) {
        return series().gas()[row] + series().dissolved()[row];
    }

    /** All carbon dioxide of the piece, mol. */
    double whole() {
        return piece.bodyMass() * piece.makeup().gasCapacity();
    }

    /** First row at or after a time, s. */
    int rowAt(double time) {
        int i = 0;
        while (series().time()[i] < time) {
            i++;
        }
        return i;
    }
}
