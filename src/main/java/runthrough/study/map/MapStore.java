package runthrough.study.map;

import java.util.Optional;

/** Keeps the points of a map as they are done, so that an interrupted map can go on from there. */
public interface MapStore {

    /** Keeps nothing. */
    MapStore NONE = new MapStore() {
        @Override
        public Optional<MapPoint> known(int column, int row) {
            return Optional.empty();
        }

        @Override
        public void add(MapPoint point) {}
    };

    /** A point that was done before, exactly as it was. Called on several threads. */
    Optional<MapPoint> known(int column, int row);

    /** A point is done that was not known; called on the thread that runs the study, in an order that does not depend on threads. */
    void add(MapPoint point);
}
