package setwright.geometry;

import java.util.List;
import setwright.geometry.plane.Region;

/** Several solids as one; they may overlap. Without any it is nothing at all. */
public record Union(List<Solid> solids) implements Solid {
    public Union {
        solids = List.copyOf(solids);
    }

    public static Union of(Solid... solids) {
        return new Union(List.of(solids));
    }

    @Override
    public Box box() {
        return solids.stream().map(Solid::box).reduce(Box.EMPTY, Box::and);
    }

    @Override
    public Region shadow(double zLow, double zHigh) {
        return solids.stream().map(solid -> solid.shadow(zLow, zHigh)).reduce(Region.NONE, Region::plus);
    }

    @Override
    public List<Single> parts() {
        return solids.stream().flatMap(solid -> solid.parts().stream()).toList();
    }

    @Override
    public Solid moved(Motion motion) {
        return new Union(solids.stream().map(solid -> solid.moved(motion)).toList());
    }

    @Override
    public Kind kind() {
        return Kind.UNION;
    }
}
