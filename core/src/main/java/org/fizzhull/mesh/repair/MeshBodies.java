package org.fizzhull.mesh.repair;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.uniting.CrossedShells;
import org.jspecify.annotations.Nullable;

/**
 * The closed surfaces of a mesh, turned so that bodies face outward and cavities into the hollow. A surface is a body or
 * a cavity by the number of surfaces around it, never by its volume alone: turning every surface outward would fill the
 * cavities in.
 */
final class MeshBodies {
    /** Most separate surfaces that are told apart. */
    static final int MOST = 1000;

    /** Largest difference between the volumes by x, y and z, as a part of the volume. */
    static final double FLUX_TOLERANCE = 1e-6;

    /** Volume of all surfaces together, as a share of the sum of their sizes, below which nothing is left. */
    private static final double LEAST_LEFT = 1e-4;

    /** Volume, as a share of that of all, up to which a surface left by uniting is a gap or a flake, not a hollow. */
    private static final double GAP = 1e-7;

    private double[] xyz;
    private int[] corners;
    private final MeshRefusals refusals;
    private final List<Notice> notices;
    private int[] label = new int[0];
    private BodySums sums = new BodySums(0);
    private @Nullable CrossedShells crossed;
    private List<MeshBody> list = List.of();
    private boolean dropped;
    private @Nullable WindingProbe probe;

    MeshBodies(double[] xyz, int[] corners, MeshRefusals refusals, List<Notice> notices) {
        this.xyz = xyz;
        this.corners = corners;
        this.refusals = refusals;
        this.notices = notices;
    }

    /** Tells the surfaces apart, turns them and unites those that overlap. */
    void arrange(EdgePairing pairing) {
        FacetJoin join = pairing.joined();
        takeApart(join);
        if (pairing.sameWay() > 0) {
            turnMinority(join, join.bodies());
        }
        measure();
        dropFlat();
        cross();
        Nesting nesting = nesting();
        boolean against = against();
        if (against) {
            crossed = null;
            nesting = nesting();
        }
        checkFluxes();
        turnInsideOut();
        if (dropFilled(nesting)) {
            cross();
            nesting = nesting();
        }
        if (crossed != null && crossed.any()) {
            unite();
            crossed = null;
            nesting = nesting();
            if (dropFilled(nesting)) {
                nesting = nesting();
            }
        }
        probe = new WindingProbe(new TriangleMesh(xyz, corners));
        if (probe.overlaps() && !against && uniteThemselves()) {
            probe = new WindingProbe(new TriangleMesh(xyz, corners));
            nesting = nesting();
            if (dropFilled(nesting)) {
                nesting = nesting();
            }
        }
        list = listBodies(nesting);
        refuseNothing();
        tell();
    }

    private void takeApart(FacetJoin join) {
        int count = join.bodies();
        if (count > MOST) {
            throw refusals.manyBodies(count, MOST);
        }
        label = count == 1 ? new int[0] : join.labels();
        sums = new BodySums(count);
    }

    private void measure() {
        sums = BodySums.of(xyz, corners, label, sums.count());
    }

    private void cross() {
        crossed = sums.count() > 1 ? CrossedShells.of(xyz, corners, label, sums.count()) : null;
    }

    /** Which surface lies in which, those that cross apart. */
    private Nesting nesting() {
        TriangleMesh mesh = crossed == null ? new TriangleMesh(xyz, corners) : crossed.grown();
        return Nesting.of(mesh, crossed, label, sums);
    }

    /** Whether surfaces cross of which one may be meant to be taken away, or both belong to one body. */
    private boolean against() {
        boolean found = false;
        for (int a = 0; a < sums.count(); a++) {
            for (int b = 0; b < a; b++) {
                int one = sums.outermost(a);
                int other = sums.outermost(b);
                found |= crossed != null
                        && crossed.cross(a, b)
                        && (one == other || sums.volume(one) > 0 != sums.volume(other) > 0);
            }
        }
        return found;
    }

    /** Makes one surface of bodies that overlap or touch; leaves them where it is not clear what they enclose. */
    private void unite() {
        int[] body = new int[sums.count()];
        Arrays.setAll(body, sums::outermost);
        double sum = sums.volume();
        Optional<CrossedShells.United> found = crossed == null ? Optional.empty() : crossed.united(body);
        if (found.isEmpty()) {
            return;
        }
        take(found.get());
        notices.add(new Notice(
                "mesh-united", found.get().bodies() + " bodies that overlap or touch were united; " + once(sum)));
    }

    /** Makes a clear surface of one that runs through itself; returns whether it is clear what it encloses. */
    private boolean uniteThemselves() {
        double sum = sums.volume();
        int[] shell = label.length == 0 ? new int[corners.length / 3] : label;
        Optional<CrossedShells.United> found = CrossedShells.themselves(xyz, corners, shell);
        if (found.isEmpty()) {
            return false;
        }
        take(found.get());
        notices.add(new Notice(
                "mesh-united", "The surface runs through itself; what lies inside all of it was united. " + once(sum)));
        return true;
    }

    private void take(CrossedShells.United united) {
        double sum = sums.volume();
        xyz = united.xyz();
        corners = united.corners();
        dropped = true;
        takeApart(EdgePairing.of(corners, xyz.length / 3).joined());
        measure();
        // what rounding leaves between faces that lie on each other
        dropSlight(GAP * sum);
    }

    /** What was counted several times of a volume, m3. */
    private String once(double before) {
        return PlaceWords.cubicCentimetres(Math.max(0, before - sums.volume()))
                + " cm3 that are filled several times count once.";
    }

    /** A body and its copy inside out enclose nothing, however large each of them is. */
    private void refuseNothing() {
        double sum = 0;
        double sizes = 0;
        for (MeshBody body : list) {
            sum += body.volume();
            sizes += Math.abs(body.volume());
        }
        if (!(sum > LEAST_LEFT * sizes)) {
            throw refusals.flat("surfaces that take away from one another all they enclose");
        }
    }

    private int body(int facet) {
        return label.length == 0 ? 0 : label[facet];
    }

    /** Turns the fewer facets of each surface where neighbours disagree. */
    private void turnMinority(FacetJoin join, int count) {
        int[] vote = new int[count];
        for (int f = 0; f < corners.length / 3; f++) {
            vote[body(f)] += join.against(f) ? -1 : 1;
        }
        int turned = 0;
        for (int f = 0; f < corners.length / 3; f++) {
            if (join.against(f) == (vote[body(f)] >= 0)) {
                turn(f);
                turned++;
            }
        }
        if (turned > 0) {
            notices.add(new Notice(
                    "mesh-winding", turned + " facets faced the other way than their neighbours and were turned."));
        }
    }

    private void turn(int facet) {
        int kept = corners[3 * facet + 1];
        corners[3 * facet + 1] = corners[3 * facet + 2];
        corners[3 * facet + 2] = kept;
    }

    /** Leaves out surfaces without volume, two facets back to back for example. */
    private void dropFlat() {
        int count = sums.count();
        int facets = dropSlight(0);
        if (facets > 0) {
            notices.add(new Notice(
                    "mesh-flat-part",
                    count - sums.count() + " parts without volume (" + facets + " facets) were left out."));
        }
    }

    /** Leaves out surfaces that enclose no more than a volume, m3, or than rounding makes; returns their facets. */
    private int dropSlight(double volume) {
        boolean[] slight = new boolean[sums.count()];
        int count = 0;
        for (int b = 0; b < slight.length; b++) {
            slight[b] = !(Math.abs(sums.volume(b)) > Math.max(volume, sums.flatVolume(b)));
            count += slight[b] ? 1 : 0;
        }
        if (count == slight.length) {
            throw refusals.flat(corners.length / 3 + " facets that enclose nothing");
        }
        return count == 0 ? 0 : drop(slight, slight.length - count);
    }

    /** Leaves out the facets of some surfaces, and measures the others anew; returns their number. */
    private int drop(boolean[] gone, int left) {
        int[] renamed = new int[gone.length];
        int kept = 0;
        for (int b = 0; b < gone.length; b++) {
            renamed[b] = gone[b] ? -1 : kept++;
        }
        int used = 0;
        int all = corners.length / 3;
        for (int f = 0; f < all; f++) {
            int body = renamed[body(f)];
            if (body >= 0) {
                System.arraycopy(corners, 3 * f, corners, 3 * used, 3);
                label[used] = body;
                used++;
            }
        }
        corners = Arrays.copyOf(corners, 3 * used);
        label = Arrays.copyOf(label, used);
        sums = new BodySums(left);
        measure();
        dropped = true;
        return all - used;
    }

    private void checkFluxes() {
        for (int b = 0; b < sums.count(); b++) {
            if (!(sums.fluxSpread(b) <= FLUX_TOLERANCE * Math.abs(sums.volume(b)))) {
                throw refusals.fluxes(sums.middle(b));
            }
        }
    }

    /** Turns each free body that is inside out, together with everything inside it. */
    private void turnInsideOut() {
        boolean[] turned = new boolean[sums.count()];
        int count = 0;
        for (int b = 0; b < turned.length; b++) {
            int outermost = sums.outermost(b);
            turned[b] = sums.volume(outermost) < 0;
            count += turned[b] ? 1 : 0;
        }
        if (count == 0) {
            return;
        }
        for (int f = 0; f < corners.length / 3; f++) {
            if (turned[body(f)]) {
                turn(f);
            }
        }
        for (int b = 0; b < turned.length; b++) {
            if (turned[b]) {
                sums.turn(b);
            }
        }
        notices.add(new Notice(
                "mesh-inverted",
                (turned.length == 1 ? "The surface was" : count + " of " + turned.length + " surfaces were")
                        + " inside out; the facets were turned."));
    }

    /**
     * Leaves out surfaces that part nothing: going in through one, the number of bodies around rises from 1 to 2, say. A
     * surface behind which there would be fewer than none has no meaning.
     */
    private boolean dropFilled(Nesting nesting) {
        boolean[] filled = new boolean[sums.count()];
        int count = 0;
        for (int b = 0; b < filled.length; b++) {
            int outside = 0;
            for (int other = 0; other < filled.length; other++) {
                outside += nesting.inside(b, other) ? sums.volume(other) > 0 ? 1 : -1 : 0;
            }
            int inside = outside + (sums.volume(b) > 0 ? 1 : -1);
            if (outside < 0 || inside < 0) {
                throw refusals.nested(sums.middle(b));
            }
            filled[b] = outside > 0 == inside > 0;
            count += filled[b] ? 1 : 0;
        }
        if (count == 0) {
            return false;
        }
        drop(filled, filled.length - count);
        notices.add(new Notice(
                "mesh-nested",
                (count == 1 ? "1 surface" : count + " surfaces")
                        + " inside a body that is solid there were left out. If a hollow is meant, subtract the inner body"
                        + " in the program it was drawn in."));
        return true;
    }

    private List<MeshBody> listBodies(Nesting nesting) {
        List<MeshBody> bodies = new ArrayList<>();
        for (int b = 0; b < sums.count(); b++) {
            bodies.add(sums.body(b, nesting.depth(b)));
        }
        bodies.sort(Comparator.comparingDouble(body -> -Math.abs(body.volume())));
        return bodies;
    }

    private void tell() {
        int solid = 0;
        int hollow = 0;
        double hollowVolume = 0;
        for (MeshBody body : list) {
            solid += body.cavity() ? 0 : 1;
            hollow += body.cavity() ? 1 : 0;
            hollowVolume -= body.cavity() ? body.volume() : 0;
        }
        if (solid > 1) {
            notices.add(new Notice("mesh-bodies", solid + " separate bodies are taken as one rigid piece."));
        }
        if (hollow > 0) {
            notices.add(new Notice(
                    "mesh-cavity",
                    (hollow == 1 ? "1 closed hollow" : hollow + " closed hollows") + " of "
                            + PlaceWords.cubicCentimetres(hollowVolume)
                            + " cm3 inside. If this is the mould and not the piece, export the piece."));
        }
    }

    /** Refuses or tells places that the surface encloses twice or inside out; only after {@link #arrange}. */
    void checkOverlaps() {
        Objects.requireNonNull(probe).check(refusals, notices);
    }

    /** The surfaces, largest first. */
    List<MeshBody> list() {
        return list;
    }

    /** The vertices, those where bodies were united included, m. */
    double[] xyz() {
        return xyz;
    }

    /** The facets that are left. */
    int[] corners() {
        return corners;
    }

    /** Whether facets were left out. */
    boolean droppedFacets() {
        return dropped;
    }
}
