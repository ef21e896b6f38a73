//! Fire service pathways as found: hatched strips with a label.

use super::Canvas;
use super::brush::Brush;
use super::labelling::{Words, point, rank};
use crate::state::State;
use crate::widgets::hatch;
use crate::{Document, text, theme};
use chalkcourse_labels::{Anchor, How};
use chalkcourse_plan::Plan;
use chalkcourse_rules::Pathway;
use egui::{Pos2, Rect, Shape, Stroke};
use std::sync::Arc;

/// The pathways of a plan, cached per plan.
#[derive(Debug)]
pub(crate) struct Paths {
    plan: Arc<Plan>,
    found: Vec<Pathway>,
}

/// Draws the pathways, if they are switched on.
pub(super) fn pathways(brush: &Brush, document: &Document, state: &State, own: &mut Canvas) {
    if !state.show_pathways {
        own.paths = None;
        return;
    }
    let plan = document.plan();
    let kept = own.paths.take().filter(|paths| Arc::ptr_eq(&paths.plan, plan));
    let paths = own.paths.insert(kept.unwrap_or_else(|| Paths {
        plan: Arc::clone(plan),
        found: chalkcourse_rules::pathways(document.job(), &plan.layout),
    }));
    let p = brush.palette;
    for path in paths.found.iter().filter(|path| path.faces.iter().any(|face| brush.space.shows(*face))) {
        let mut outline: Vec<Pos2> =
            path.outline.iter().map(|&at| brush.space.screen_from_plan(at)).collect();
        let seen = brush.space.area;
        for (a, b) in hatch(&outline, seen) {
            brush.painter.line_segment([a, b], Stroke::new(1.0, theme::faint(p.note, 150)));
        }
        let words = text::pathway(path, document.job().units);
        let show = brush.small(&words, p.note);
        // Low on the screen first, where there are fewer names than at half height.
        let anchor = Anchor::Within {
            rings: vec![outline.iter().copied().map(point).collect()],
            home: point(label_spot(&outline, 0.87)),
        };
        let tries = vec![(show.clone(), How::Home), (show, How::Leader(60.0))];
        brush.say(Words::of(rank::BLOCK, anchor, tries, p.note));
        outline.extend(outline.first().copied());
        if Rect::from_points(&outline).size().max_elem() < 50_000.0 {
            brush.painter.extend(Shape::dashed_line(&outline, Stroke::new(1.6, p.note), 10.0, 5.0));
        }
    }
}

/// The position of a label: the middle of the longest level interval at a fraction of the height from the top.
fn label_spot(outline: &[Pos2], part: f32) -> Pos2 {
    let bounds = Rect::from_points(outline);
    let y = bounds.top() + bounds.height() * part;
    let mut crossings: Vec<f32> = outline
        .iter()
        .zip(outline.iter().cycle().skip(1))
        .filter(|(a, b)| (a.y > y) != (b.y > y))
        .map(|(a, b)| a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y))
        .collect();
    crossings.sort_by(f32::total_cmp);
    crossings
        .chunks_exact(2)
        .filter_map(|pair| if let [from, to] = *pair { Some((to - from, (from + to) / 2.0)) } else { None })
        .max_by(|a, b| a.0.total_cmp(&b.0))
        .map_or(bounds.center(), |(_, x)| Pos2::new(x, y))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A C of three strips, open on the right.
    fn c() -> Vec<Pos2> {
        [
            (0.0, 0.0),
            (100.0, 0.0),
            (100.0, 20.0),
            (20.0, 20.0),
            (20.0, 80.0),
            (100.0, 80.0),
            (100.0, 100.0),
            (0.0, 100.0),
        ]
        .map(|(x, y)| Pos2::new(x, y))
        .to_vec()
    }

    #[test]
    fn a_hatch_stays_inside_a_concave_outline() {
        let all = Rect::from_min_max(Pos2::new(-500.0, -500.0), Pos2::new(500.0, 500.0));
        let lines = hatch(&c(), all);
        assert!(lines.len() > 20);
        for (a, b) in lines {
            let middle = a + (b - a) * 0.5;
            let inside = (0.0..=100.0).contains(&middle.x) && (0.0..=100.0).contains(&middle.y);
            let hollow = middle.x > 20.01 && middle.y > 20.01 && middle.y < 79.99;
            assert!(inside && !hollow, "{middle}");
        }
        assert!(hatch(&c(), all.translate(egui::vec2(5_000.0, 0.0))).is_empty());
    }

    #[test]
    fn the_label_is_on_the_strip() {
        assert_eq!(label_spot(&c(), 0.87), Pos2::new(50.0, 87.0));
        assert_eq!(label_spot(&c(), 0.5), Pos2::new(10.0, 50.0));
    }
}
