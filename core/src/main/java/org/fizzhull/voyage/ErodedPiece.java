package org.fizzhull.voyage;

import org.fizzhull.medium.Bath;

/**
 * The piece of one launch with its front at a depth, for the {@link QuickVoyage}: what is left of it, how deep water
 * stands in its face, how much of it the bath covers where it lies, and what it has to spare.
 *
 * <p>Depths are given in steps of the grid of the stage ({@link ErosionGrid}), whose table belongs to the computed
 * shape; volumes, areas and times are those of the launch ({@link org.fizzhull.voyage} has the factors). Use: {@link
 * #launch}, for each stage {@link #enter}, then {@link #reach} for each depth and its time, and {@link #spare} there.
 * Allocates nothing, serves one thread.
 */
final class ErodedPiece {
    /** Smallest size of a piece that comes up, over its size at the start. */
    private static final double LEAST_HALF = 0.1;

    /** What a voyage asks of the shape. */
    private final VoyageForm form;
    /** The balance of this launch. */
    final ForceBalance balance;
    /** What carries and what weighs it, just below the surface and on the bottom. */
    private final PieceForces forces;

    /** True volume over that of the table. */
    double volumeScale;

    /** True length over that of the table. */
    private double stretch;
    /** True area over that of the table. */
    double areaScale;
    /** Speed of the front in the depth of the table where it is wet, m/s. */
    double speed;
    /** True surface over the computed one, size apart. */
    private double surface;
    /** Depth of its centre where it lies on the bottom, m. */
    private double bottom;
    /** Whether the piece is taller than the bath is deep. */
    private boolean shallow;
    /** What share of it the bath covers on the bottom. */
    double covered;
    /** Since the drop, s. */
    double time;
    /** Depth of the wet skin at {@link #time}, m. */
    private double skin;

    /** The faces that are wet now. */
    private Stage stage;

    /** Pieces of a form in a bath. */
    ErodedPiece(VoyageForm form, Bath bath) {
        this.form = form;
        balance = new ForceBalance(new BathProperties(bath, form.halfHeight));
        forces = new PieceForces(form, balance);
        stage = form.flooded;
    }

    /** Takes a launch, which is whole and has just been let go. */
    void launch(Launch launch) {
        double surfaceRatio = launch.surfaceRatio();
        double scale = Math.cbrt(launch.volumeRatio());
        volumeScale = launch.volumeRatio();
        stretch = scale;
        areaScale = scale * scale * surfaceRatio;
        balance.set(launch, form.volume);
        // in the depth of the table, which a larger piece stretches and a rougher surface shortens
        speed = balance.recession * surfaceRatio / scale;
        surface = surfaceRatio;
        shallow = balance.water.bathDepth() < 2 * form.halfHeight * scale;
        covered = 1;
        bottom = Math.max(form.halfHeight, balance.water.bathDepth() - form.halfHeight);
        forces.launch(bottom);
        clock(0);
    }

    /** Enters a stage, upside down with what air its hollow holds. */
    void enter(Stage entered) {
        stage = entered;
        forces.pocket(stage.hollow() * volumeScale, bottom);
        forces.enter(stage, surface);
    }

    /** Sets the time alone, s. */
    void clock(double seconds) {
        time = seconds;
        skin = balance.skinDepth(seconds);
    }

    /** The front is at a depth at a time, s. */
    void reach(double steps, double seconds) {
        clock(seconds);
        if (shallow) {
            double draft = balance.water.bathDepth() / (2 * half(steps));
            covered = draft < 1 ? stage.immersion().fraction(draft) : 1;
        }
        forces.letGo(steps * stage.grid().step);
    }

    /** Volume of the table left at a depth, m3. */
    double left(double steps) {
        return stage.grid().volumeAfter(steps);
    }

    /** Volume of the body at a depth, m3. */
    double body(double steps) {
        return left(steps) * volumeScale;
    }

    /** Area of the front there, m2. */
    double front(double steps) {
        return stage.grid().areaAfter(steps) * areaScale;
    }

    /** Half of the height of what is left at a depth, m. */
    private double half(double steps) {
        double whole = form.halfHeight * stretch;
        return Math.max(LEAST_HALF * whole, whole - steps * stage.grid().step * stretch / surface);
    }

    /** Diameter of a disc of the plan area of what is left at a depth, m. */
    double width(double steps) {
        return form.planDiameter * half(steps) / form.halfHeight;
    }

    /**
     * From the balance's change of sign on the bottom to the surface, s.
     *
     * @param steps depth of the front
     * @param growth of the spare over the displacement, 1/s
     */
    double lag(double steps, double growth) {
        double way = Math.max(0, balance.water.bathDepth() - 2 * half(steps));
        return form.resistance.lag(growth, way, body(steps), width(steps));
    }

    /** Depth that a front reaches in a time, s, where all of it is wet; not beyond the end of the grid. */
    double stepsIn(double seconds) {
        return Math.min(stage.grid().cells, seconds * speed / stage.grid().step);
    }

    /** Whether the wet skin is as deep as it gets: the balance then depends on the depth of the front alone. */
    boolean soaked() {
        return balance.isSteady(skin);
    }

    /** Water in the pores of a body, m3, behind a front, m2; kg. */
    private double soaked(double body, double front) {
        return balance.soaked(skin, front, body);
    }

    /** Spare wholly under water, just below the surface (high) or on the bottom, kg. */
    double spare(boolean high, double body, double front) {
        return forces.spare(stage, high, body, front, soaked(body, front), covered);
    }

    /** What the water carries of a body that floats, kg. */
    double load(double body, double front) {
        return forces.weight(body) + soaked(body, front);
    }

    /** Share of the hull under water nearer to where lift meets a load; see {@link PieceForces#afloat}. */
    double afloat(double body, double front, double load, double share, double wet) {
        return forces.afloat(stage, body, front, load, share, wet);
    }

    /** Displacement of a body, kg. */
    double displaced(double body) {
        return balance.water.density * body;
    }
}
