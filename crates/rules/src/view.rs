//! Views for rules. Each kind of run gets a view of exactly what may affect its findings. The checker compares everything a view
//! exposes before it reuses cached findings, so a rule that read more would not compile. The snapshot itself is private to this
//! file.

use crate::way::{Opening, Pathway, beside};
use crate::wind::Conditions;
use chalkcourse_geometry::fit::Part;
use chalkcourse_geometry::{Rect, Roof, RoofFace};
use chalkcourse_job::{Block, BlockId, Cell, Face, FaceId, Kit, Penetration, Resolved, RuleBook, Site};
use chalkcourse_layout::{Layout, OnFace, PlacedBlock, PlacedFace, PlacedPenetration};
use chalkcourse_limits::{Given, KeepOut, Share};
use chalkcourse_wiring::Wires;
use std::cell::OnceCell;
use std::collections::HashMap;
use std::sync::Arc;

/// A job with its layout, and its blocks grouped by face.
pub(crate) struct Snapshot<'a> {
    job: &'a Resolved,
    layout: &'a Layout,
    /// Non-empty blocks on sound faces, in the order of the job.
    blocks: Vec<Laid<'a>>,
    /// For each face, the indices of its blocks in `blocks`.
    on_face: Vec<Vec<usize>>,
    /// For each face, its penetrations.
    through: Vec<Vec<Through<'a>>>,
    /// For each face, the pathways on it and straddling it; computed on first use.
    planes: Vec<Planes>,
    /// The share of the plan roof area that the array covers; computed on first use.
    share: OnceCell<f64>,
    /// What keep-outs depend on beyond a face, without any block; computed on first use.
    given: OnceCell<Given>,
    wind: OnceCell<Option<Conditions>>,
    /// The circuits as wired; computed on first use.
    /// The circuits as wired, where they are given; else computed on first use.
    given_wires: Option<&'a Wires>,
    wires: OnceCell<Wires>,
}

/// Cached pathways of one plane.
#[derive(Debug, Default)]
pub(crate) struct Planes {
    /// On the plane alone.
    pub(crate) alone: OnceCell<Vec<Pathway>>,
    /// Straddling it and an adjacent plane, one per adjacent plane.
    pub(crate) straddling: OnceCell<Vec<Pathway>>,
    /// Modules to remove to open one, least loss first.
    pub(crate) openings: OnceCell<Vec<Opening>>,
}

/// A block on a sound face.
pub(crate) struct Laid<'a> {
    pub(crate) block: &'a Block,
    pub(crate) placed: &'a PlacedBlock,
    pub(crate) face: &'a RoofFace,
    pub(crate) on: &'a PlacedFace,
    /// Bounding box of its modules in the face's frame.
    pub(crate) bounds: Rect,
    /// Each contiguous run of modules in a row as one rectangle.
    pub(crate) rows: Vec<Rect>,
}

impl Laid<'_> {
    /// Its modules, as limits see them.
    pub(crate) fn modules(&self) -> impl Iterator<Item = (Cell, Part)> {
        self.placed
            .modules
            .iter()
            .map(|module| (module.cell, Part { rect: module.rect, lowest: module.cell.row == 0 }))
    }

    /// Its bounding box as a single part.
    pub(crate) fn whole(&self) -> Part {
        Part { rect: self.bounds, lowest: true }
    }
}

/// The keep-outs of a limit on a face, independent of blocks.
#[derive(Clone, Debug)]
pub(crate) struct KeptOff(pub(crate) Arc<[KeepOut]>);

impl PartialEq for KeptOff {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0) || self.0 == other.0
    }
}

/// What the keep-outs of a face depend on besides the face, its penetrations and its blocks.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Beyond {
    /// How much of the roof the array covers.
    share: Share,
    /// For each stretch of its border, whether there are modules beyond it.
    covered: Vec<bool>,
}

/// A penetration of a face.
#[derive(Clone, Copy)]
pub(crate) struct Through<'a> {
    /// As the person placed it.
    pub(crate) penetration: &'a Penetration,
    pub(crate) placed: &'a Arc<PlacedPenetration>,
    /// Its outline on the face.
    pub(crate) on: &'a OnFace,
}

/// What every rule may read: kit, book, site and units.
macro_rules! given {
    ($view:ident) => {
        impl<'s> $view<'s> {
            #[allow(dead_code, reason = "each view gives what every rule may read, asked for or not")]
            pub(crate) fn kit(&self) -> &'s Kit {
                &self.snapshot.job.kit
            }
            #[allow(dead_code, reason = "as above")]
            pub(crate) fn book(&self) -> &'s RuleBook {
                &self.snapshot.job.rule_book
            }
            #[allow(dead_code, reason = "as above")]
            pub(crate) fn site(&self) -> &'s Site {
                &self.snapshot.job.site
            }
        }
    };
}

/// One block with its face and its penetrations; no other block.
#[derive(Clone, Copy)]
pub(crate) struct BlockView<'s> {
    snapshot: &'s Snapshot<'s>,
    pub(crate) laid: &'s Laid<'s>,
}
given!(BlockView);

impl<'s> BlockView<'s> {
    pub(crate) fn through(&self) -> &'s [Through<'s>] {
        self.snapshot.through(self.laid.placed.face)
    }
}

/// One sound face and its penetrations; no block.
#[derive(Clone, Copy)]
pub(crate) struct GroundView<'s> {
    snapshot: &'s Snapshot<'s>,
    pub(crate) face: &'s RoofFace,
    pub(crate) on: &'s PlacedFace,
}
given!(GroundView);

/// One face with its penetrations and blocks.
#[derive(Clone, Copy)]
pub(crate) struct FaceView<'s> {
    snapshot: &'s Snapshot<'s>,
    /// Its index in the roof.
    pub(crate) index: usize,
    pub(crate) face: &'s RoofFace,
    pub(crate) on: &'s PlacedFace,
}
given!(FaceView);

impl<'s> FaceView<'s> {
    pub(crate) fn through(&self) -> &'s [Through<'s>] {
        self.snapshot.through(self.index)
    }

    /// Its blocks, in the order of the job.
    pub(crate) fn laid(&self) -> impl Iterator<Item = &'s Laid<'s>> + use<'s> {
        let snapshot = self.snapshot;
        let list = snapshot.on_face.get(self.index).map(Vec::as_slice).unwrap_or_default();
        list.iter().filter_map(move |&index| snapshot.blocks.get(index))
    }

    /// The keep-outs of a limit there, including each of its blocks as an obstacle to the others.
    pub(crate) fn keep_outs(&self, code: &str) -> Vec<KeepOut> {
        let standing = self.laid().map(|laid| laid.block.id).collect();
        self.snapshot.keep_outs(code, self.index, &Given { standing, ..self.snapshot.given().clone() })
    }

    /// The view of one of its blocks.
    pub(crate) fn block(&self, laid: &'s Laid<'s>) -> BlockView<'s> {
        BlockView { snapshot: self.snapshot, laid }
    }

    /// Its cached pathways.
    pub(crate) fn planes(&self) -> Option<&'s Planes> {
        self.snapshot.planes.get(self.index)
    }
}

/// One face with its blocks, and the adjacent ones over a hip, a valley or a change of pitch, with theirs.
#[derive(Clone, Copy)]
pub(crate) struct BesideView<'s> {
    pub(crate) own: FaceView<'s>,
}

impl<'s> BesideView<'s> {
    /// The adjacent faces.
    pub(crate) fn beside(&self) -> impl Iterator<Item = FaceView<'s>> + use<'s> {
        let snapshot = self.own.snapshot;
        beside(self.own.face).filter_map(move |index| snapshot.face(index))
    }

    pub(crate) fn book(&self) -> &'s RuleBook {
        self.own.book()
    }
}

/// The faces as drawn and how they meet; no block and no penetration.
#[derive(Clone, Copy)]
pub(crate) struct DrawnView<'s> {
    snapshot: &'s Snapshot<'s>,
}
given!(DrawnView);

impl<'s> DrawnView<'s> {
    pub(crate) fn faces(&self) -> &'s [Face] {
        &self.snapshot.job.faces
    }

    pub(crate) fn roof(&self) -> &'s Roof {
        &self.snapshot.layout.roof
    }

    /// The id of a face of the roof.
    pub(crate) fn id(&self, index: usize) -> Option<FaceId> {
        self.snapshot.layout.faces.get(index).map(|face| face.id)
    }
}

/// One penetration, and the faces as drawn.
#[derive(Clone, Copy)]
pub(crate) struct PenetrationView<'s> {
    pub(crate) drawn: DrawnView<'s>,
    pub(crate) penetration: &'s PlacedPenetration,
}

/// The whole job.
#[derive(Clone, Copy)]
pub(crate) struct WholeView<'s> {
    snapshot: &'s Snapshot<'s>,
}
given!(WholeView);

impl<'s> WholeView<'s> {
    pub(crate) fn job(&self) -> &'s Resolved {
        self.snapshot.job
    }

    pub(crate) fn layout(&self) -> &'s Layout {
        self.snapshot.layout
    }

    /// The circuits as wired.
    pub(crate) fn wires(&self) -> &'s Wires {
        let Snapshot { job, layout, given_wires, wires, .. } = self.snapshot;
        given_wires.unwrap_or_else(|| wires.get_or_init(|| Wires::of(job, layout)))
    }

    /// The keep-outs of a limit on a face, independent of blocks; none where it is off.
    pub(crate) fn keep_outs(&self, code: &str, face: usize) -> Vec<KeepOut> {
        self.snapshot.keep_outs(code, face, self.snapshot.given())
    }

    /// Non-empty blocks on sound faces, in the order of the job.
    pub(crate) fn laid(&self) -> &'s [Laid<'s>] {
        &self.snapshot.blocks
    }

    /// All faces of the roof, sound or not.
    pub(crate) fn faces(&self) -> impl Iterator<Item = BesideView<'s>> + use<'s> {
        let snapshot = self.snapshot;
        (0..snapshot.layout.roof.faces.len())
            .filter_map(move |index| snapshot.face(index))
            .map(|own| BesideView { own })
    }
}

impl<'a> Snapshot<'a> {
    pub(crate) fn of(job: &'a Resolved, layout: &'a Layout) -> Self {
        let by_id: HashMap<BlockId, &Block> = job.blocks.iter().map(|block| (block.id, block)).collect();
        let blocks: Vec<Laid<'a>> = layout
            .blocks
            .iter()
            .filter_map(|placed| {
                let face = layout.roof.faces.get(placed.face).filter(|face| face.sound)?;
                Some(Laid {
                    block: by_id.get(&placed.id)?,
                    placed,
                    face,
                    on: layout.faces.get(placed.face)?,
                    bounds: placed.bounds?,
                    rows: placed.stretches().map(|(_, row)| row).collect(),
                })
            })
            .collect();
        let mut on_face = vec![Vec::new(); layout.roof.faces.len()];
        for (index, laid) in blocks.iter().enumerate() {
            if let Some(list) = on_face.get_mut(laid.placed.face) {
                list.push(index);
            }
        }
        let mut through = vec![Vec::new(); layout.roof.faces.len()];
        for (penetration, placed) in job.penetrations.iter().zip(&layout.penetrations) {
            for on in &placed.on {
                if let Some(list) = through.get_mut(on.face) {
                    list.push(Through { penetration, placed, on });
                }
            }
        }
        Self {
            job,
            layout,
            planes: layout.roof.faces.iter().map(|_| Planes::default()).collect(),
            share: OnceCell::new(),
            given: OnceCell::new(),
            wind: OnceCell::new(),
            given_wires: None,
            wires: OnceCell::new(),
            blocks,
            on_face,
            through,
        }
    }

    /// With the circuits as wired.
    pub(crate) fn wired(mut self, wires: &'a Wires) -> Self {
        self.given_wires = Some(wires);
        self
    }

    /// The penetrations of a face.
    pub(crate) fn through(&self, face: usize) -> &[Through<'a>] {
        self.through.get(face).map(Vec::as_slice).unwrap_or_default()
    }

    /// The blocks of all faces, in the order of the job.
    pub(crate) fn blocks(&self) -> impl Iterator<Item = BlockView<'_>> {
        self.blocks.iter().map(|laid| BlockView { snapshot: self, laid })
    }

    pub(crate) fn face(&self, index: usize) -> Option<FaceView<'_>> {
        let (face, on) = (self.layout.roof.faces.get(index)?, self.layout.faces.get(index)?);
        Some(FaceView { snapshot: self, index, face, on })
    }

    /// A face for rules that read the face itself and nothing that lies on it; `None` if it is not sound.
    pub(crate) fn ground(&self, index: usize) -> Option<GroundView<'_>> {
        let FaceView { snapshot, face, on, .. } = self.face(index)?;
        face.sound.then_some(GroundView { snapshot, face, on })
    }

    pub(crate) fn drawn(&self) -> DrawnView<'_> {
        DrawnView { snapshot: self }
    }

    pub(crate) fn whole(&self) -> WholeView<'_> {
        WholeView { snapshot: self }
    }

    /// The plan area of the array divided by that of the whole roof.
    pub(crate) fn share(&self) -> f64 {
        *self.share.get_or_init(|| chalkcourse_limits::array_share(self.layout))
    }

    /// The wind conditions of the roof; `None` if book or site lack data.
    pub(crate) fn wind(&self) -> Option<&Conditions> {
        self.wind.get_or_init(|| Conditions::of(self.job, self.layout)).as_ref()
    }

    fn given(&self) -> &Given {
        self.given.get_or_init(|| Given { standing: Vec::new(), ..Given::as_laid(self.job, self.layout) })
    }

    /// What the keep-outs of a face depend on besides the face and its blocks.
    pub(crate) fn beyond(&self, face: &RoofFace) -> Beyond {
        let given = self.given();
        let covered = face.edges.iter().map(|span| given.covered_beyond(span)).collect();
        Beyond { share: given.share, covered }
    }

    /// The keep-outs of a rule's limit on a face, independent of blocks.
    pub(crate) fn kept_off(&self, code: &str, face: usize) -> KeptOff {
        KeptOff(self.keep_outs(code, face, self.given()).into())
    }

    fn keep_outs(&self, code: &str, face: usize, given: &Given) -> Vec<KeepOut> {
        let limit = chalkcourse_limits::limit(code);
        limit.map_or_else(Vec::new, |limit| limit.keep_outs(self.job, self.layout, face, given))
    }

    /// The pathways of each face, to save to and restore from the checker's cache.
    pub(crate) fn planes_mut(&mut self) -> &mut Vec<Planes> {
        &mut self.planes
    }
}
