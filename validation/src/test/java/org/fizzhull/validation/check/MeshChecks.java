package org.fizzhull.validation.check;

import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.quantity.Units;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Inputs;

/** Sums over triangle meshes. */
public final class MeshChecks extends Bindings {
    public MeshChecks() {
        super("mesh");
        bind("tetrahedron", MeshChecks::tetrahedron);
        bind("icosphere-volume", in -> 1e9 * icosphere(in).volume());
        bind("icosphere-surface", in -> 1e6 * icosphere(in).area());
        bind("mesh-order", MeshOrders::order);
        bind("mesh-limit", MeshOrders::limit);
    }

    /** Corners "x y z" a, b, c, d; lengths without a unit. */
    private static double tetrahedron(Inputs in) {
        double[] xyz = new double[12];
        String[] names = {"a", "b", "c", "d"};
        for (int i = 0; i < names.length; i++) {
            String[] parts = in.word(names[i]).split(" ", -1);
            for (int k = 0; k < 3; k++) {
                xyz[3 * i + k] = Double.parseDouble(parts[k]);
            }
        }
        MassProperties m = MassProperties.of(new TriangleMesh(xyz, new int[] {0, 1, 2, 0, 3, 1, 0, 2, 3, 1, 3, 2}));
        boolean inverted = m.volume() < 0;
        double sign = inverted ? -1 : 1;
        return switch (in.word("of")) {
            case "V" -> sign * m.volume();
            case "Gx" -> m.centroid().x();
            case "Gy" -> m.centroid().y();
            case "Gz" -> m.centroid().z();
            case "Ixx" -> sign * (m.yy() + m.zz());
            case "Iyy" -> sign * (m.xx() + m.zz());
            case "Izz" -> sign * (m.xx() + m.yy());
            case "xy" -> sign * m.xy();
            case "yz" -> sign * m.yz();
            case "zx" -> sign * m.zx();
            default -> throw new IllegalArgumentException(in.word("of"));
        };
    }

    private static MassProperties icosphere(Inputs in) {
        return MassProperties.of(Icosphere.of(Units.millimetres(in.number("R_mm")), (int) in.number("k")));
    }
}
