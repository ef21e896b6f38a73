use chalkcourse_geometry::Polygon;

/// Where a level line crosses the border of a polygon, from the left.
pub(super) fn crossings(shape: &Polygon, v: f64) -> Vec<f64> {
    let mut crossings: Vec<f64> = shape
        .sides()
        .filter(|(_, _, a, b)| (a.y > v) != (b.y > v))
        .map(|(_, _, a, b)| a.x + (b.x - a.x) * (v - a.y) / (b.y - a.y))
        .collect();
    crossings.sort_by(f64::total_cmp);
    crossings
}
