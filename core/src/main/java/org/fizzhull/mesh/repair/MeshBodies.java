package org.fizzhull.mesh.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.uniting.CrossedShells;
import org.jspecify.annotations.Nullable;

/**
 * Orients the closed surfaces of a mesh, so that bodies face outward and cavities into the hollow, and unites those
 * that overlap. Whether a surface is a body or a cavity follows from the number of surfaces around it, never from the
 * sign of its volume alone: turning every surface outward would fill the cavities.
 */
final class MeshBodies {
    /** Most separate surfaces that a mesh may have; more are refused. */
    private static final int MOST = 1000;

    /**
     * Sum of all signed volumes, as a share of the sum of their magnitudes, up to which the mesh encloses nothing.
     */
    private static final double LEAST_LEFT = 1e-4;

    /**
     * Volume, as a share of the total, up to which a surface left by uniting is an artefact of rounding and left out.
     */
    private static final double GAP = 1e-7;

    private final MeshRefusals refusals;
    private final List<Notice> notices;
    private Surfaces surfaces;

    /** Which surfaces cross; null for a single surface, and where crossings are not to be united. */
    private @Nullable CrossedShells crossed;

    private Nesting nesting;

    /**
     * The surfaces of paired facets; where neighbouring facets are wound in opposite senses the minority is turned.
     */
    MeshBodies(double[] xyz, EdgePairing pairing, MeshRefusals refusals, List<Notice> notices) {
        this.refusals = refusals;
        this.notices = notices;
        refuseMany(pairing.joined);
        if (pairing.mixed) {
            turnMinority(pairing);
        }
        surfaces = Surfaces.of(xyz, pairing.corners, pairing.joined);
        dropFlat();
        crossed = crossed();
        nesting = new Nesting(surfaces, crossed);
    }

    /**
     * Orients the surfaces, unites those that overlap, and returns the remaining ones. The nesting comes first, since
     * it says which surfaces are bodies. Then bodies are turned outward, surfaces inside solid material are left out,
     * and bodies that cross are united. Where one of two crossing surfaces may be meant to be subtracted, none is
     * united; {@link WindingProbe} then measures along lines how much is enclosed twice, and refuses too much of it.
     */
    Surfaces arranged() {
        boolean subtract = maySubtract();
        if (subtract) {
            crossed = null;
            nesting = new Nesting(surfaces, null);
        }
        checkFluxes();
        turnInsideOut();
        if (dropFilled()) {
            crossed = crossed();
            nesting = new Nesting(surfaces, crossed);
        }
        if (crossed != null && crossed.any()) {
            unite(crossed);
            nesting = new Nesting(surfaces, null);
            dropFilled();
        }
        WindingProbe probe = new WindingProbe(surfaces.mesh());
        if (probe.overlaps() && !subtract && uniteSelfIntersecting()) {
            nesting = new Nesting(surfaces, null);
            dropFilled();
            probe = new WindingProbe(surfaces.mesh());
        }
        refuseNothing();
        reportBodies();
        probe.check(refusals, notices);
        return surfaces;
    }

    private void refuseMany(FacetComponents joined) {
        if (joined.bodies() > MOST) {
            throw refusals.manyBodies(joined.bodies(), MOST);
        }
    }

    /** Finds which surfaces cross; null for a single surface, which is not compared with itself. */
    private @Nullable CrossedShells crossed() {
        return surfaces.count() == 1
                ? null
                : new CrossedShells(surfaces.xyz(), surfaces.corners(), surfaces.label(), surfaces.count());
    }

    /** Whether two surfaces cross of which one may be meant to be subtracted, or which belong to the same body. */
    private boolean maySubtract() {
        boolean found = false;
        for (int a = 0; a < surfaces.count(); a++) {
            for (int b = 0; b < a; b++) {
                if (crossed != null && crossed.cross(a, b)) {
                    int one = nesting.outermost(a);
                    int other = nesting.outermost(b);
                    found |= one == other || nesting.step(one) != nesting.step(other);
                }
            }
        }
        return found;
    }

    /** Unites bodies that overlap or touch; leaves them as they are where it is not clear what they enclose. */
    private void unite(CrossedShells shells) {
        int[] body =
                IntStream.range(0, surfaces.count()).map(nesting::outermost).toArray();
        Optional<CrossedShells.United> found = shells.united(body);
        if (found.isPresent()) {
            String once = replaceBy(found.get());
            addNotice("mesh-united", found.get().bodies() + " bodies that overlap or touch were united; " + once);
        }
    }

    /** Replaces surfaces that intersect themselves by what they enclose; returns whether that could be done. */
    private boolean uniteSelfIntersecting() {
        Optional<CrossedShells.United> found =
                CrossedShells.themselves(surfaces.xyz(), surfaces.corners(), surfaces.label());
        if (found.isPresent()) {
            String once = replaceBy(found.get());
            addNotice("mesh-united", "The surface runs through itself; what lies inside all of it was united. " + once);
        }
        return found.isPresent();
    }

    /**
     * Replaces the surfaces by their union; returns a sentence with the volume that had been counted several times.
     */
    private String replaceBy(CrossedShells.United united) {
        double before = surfaces.volume();
        EdgePairing pairing = new EdgePairing(united.corners(), united.xyz().length / 3);
        refuseMany(pairing.joined);
        surfaces = Surfaces.of(united.xyz(), united.corners(), pairing.joined);
        // slivers that rounding leaves between coincident faces
        dropSlight(GAP * before);
        return PlaceWords.cubicCentimetres(Math.max(0, before - surfaces.volume()))
                + " cm3 that are filled several times count once.";
    }

    /** Refuses surfaces whose volumes cancel, as of a body and its copy inside out. */
    private void refuseNothing() {
        double sizes = surfaces.list().stream()
                .mapToDouble(surface -> Math.abs(surface.volume()))
                .sum();
        if (!(surfaces.volume() > LEAST_LEFT * sizes)) {
            throw refusals.flat("surfaces that take away from one another all they enclose");
        }
    }

    /** Turns the minority of the facets of each surface where neighbours are wound in opposite senses. */
    private void turnMinority(EdgePairing pairing) {
        FacetComponents joined = pairing.joined;
        int[] label = joined.labels();
        int[] vote = new int[joined.bodies()];
        for (int f = 0; f < label.length; f++) {
            vote[label[f]] += joined.against(f) ? -1 : 1;
        }
        int turned = 0;
        for (int f = 0; f < label.length; f++) {
            if (joined.against(f) == vote[label[f]] >= 0) {
                Surfaces.turn(pairing.corners, f);
                turned++;
            }
        }
        if (turned > 0) {
            addNotice("mesh-winding", turned + " facets faced the other way than their neighbours and were turned.");
        }
    }

    /** Leaves out surfaces without volume, two facets back to back for example. */
    private void dropFlat() {
        List<Surface> flat = dropSlight(0);
        if (!flat.isEmpty()) {
            int facets = flat.stream().mapToInt(Surface::facets).sum();
            addNotice("mesh-flat-part", flat.size() + " parts without volume (" + facets + " facets) were left out.");
        }
    }

    /** Leaves out surfaces that enclose no more than a volume, m3, or than rounding makes; returns them. */
    private List<Surface> dropSlight(double volume) {
        List<Surface> slight = surfaces.list().stream()
                .filter(surface -> surface.slight(volume))
                .toList();
        if (slight.size() == surfaces.count()) {
            throw refusals.flat(slight.stream().mapToInt(Surface::facets).sum() + " facets that enclose nothing");
        }
        surfaces = surfaces.without(slight);
        return slight;
    }

    /** Refuses surfaces whose fluxes along x, y and z differ by more than rounding: they have no inside. */
    private void checkFluxes() {
        for (Surface surface : surfaces.list()) {
            if (!surface.closed()) {
                throw refusals.fluxes(surface.middle());
            }
        }
    }

    /** Turns each free body that is inside out, together with everything inside it. */
    private void turnInsideOut() {
        List<Surface> insideOut = IntStream.range(0, surfaces.count())
                .filter(b -> surfaces.get(nesting.outermost(b)).volume() < 0)
                .mapToObj(surfaces::get)
                .toList();
        surfaces.turn(insideOut);
        if (!insideOut.isEmpty()) {
            int all = surfaces.count();
            addNotice(
                    "mesh-inverted",
                    (all == 1 ? "The surface was" : insideOut.size() + " of " + all + " surfaces were")
                            + " inside out; the facets were turned.");
        }
    }

    /**
     * Leaves out surfaces with material on both sides: the winding number, the number of bodies around a point,
     * changes there from 1 to 2, say. A negative winding number on either side is refused. Returns whether any was
     * left out.
     */
    private boolean dropFilled() {
        List<Surface> filled = new ArrayList<>();
        for (int b = 0; b < surfaces.count(); b++) {
            int outside = nesting.windingOutside(b);
            int inside = outside + nesting.step(b);
            if (outside < 0 || inside < 0) {
                throw refusals.nested(surfaces.get(b).middle());
            }
            if (outside > 0 == inside > 0) {
                filled.add(surfaces.get(b));
            }
        }
        if (!filled.isEmpty()) {
            surfaces = surfaces.without(filled);
            addNotice(
                    "mesh-nested",
                    (filled.size() == 1 ? "1 surface" : filled.size() + " surfaces")
                            + " inside a body that is solid there were left out. If a hollow is meant, subtract the"
                            + " inner body in the program it was drawn in.");
        }
        return !filled.isEmpty();
    }

    private void addNotice(String code, String text) {
        notices.add(new Notice(code, text));
    }

    /** Says how many bodies and closed hollows there are, where it is not one body. */
    private void reportBodies() {
        List<Surface> hollows =
                surfaces.list().stream().filter(surface -> surface.volume() < 0).toList();
        int solid = surfaces.count() - hollows.size();
        if (solid > 1) {
            addNotice(
                    "mesh-bodies",
                    solid + " separate bodies are taken as one rigid piece. If each is a piece, export one of them.");
        }
        if (!hollows.isEmpty()) {
            double volume = -hollows.stream().mapToDouble(Surface::volume).sum();
            addNotice(
                    "mesh-cavity",
                    (hollows.size() == 1 ? "1 closed hollow" : hollows.size() + " closed hollows") + " of "
                            + PlaceWords.cubicCentimetres(volume)
                            + " cm3 inside. If this is the mould and not the piece, export the piece.");
        }
    }
}
