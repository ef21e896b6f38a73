use crate::names::{Names, sentence};
use chalkcourse_job::{BlockId, Cell, Job};
use chalkcourse_rules::{Candidate, Change};
use chalkcourse_words::{modules, pick, tell};

/// What a candidate does, as on a button: "Move block A 3 1/4\" up the slope".
pub fn label(job: &Job, candidate: &Candidate) -> String {
    let names = Names { job };
    match &candidate.change {
        Change::Move(block, by) => {
            let ways = [
                (by.x, pick("to the left", "a la izquierda"), pick("to the right", "a la derecha")),
                (by.y, pick("down the slope", "pendiente abajo"), pick("up the slope", "pendiente arriba")),
            ];
            let ways = ways.into_iter().filter(|(by, ..)| *by != 0.0).map(|(by, less, more)| {
                format!("{} {}", names.length(by.abs()), if by < 0.0 { less } else { more })
            });
            tell!(
                "Move {} {}",
                "Mover {} {}",
                names.block(*block),
                ways.collect::<Vec<_>>().join(pick(" and ", " y "))
            )
        }
        Change::Take(block) => tell!("Take {} away", "Quitar {}", names.block(*block)),
        Change::SwitchOff(block, count) => {
            tell!("Switch off {} of {}", "Quitar {} de {}", modules(*count), names.block(*block))
        }
        Change::SwitchOn(block, row, count) => tell!(
            "Switch on {} in row {} of {}",
            "Volver a poner {} en la fila {} de {}",
            modules(*count),
            row + 1,
            names.block(*block)
        ),
        Change::ShiftOver(block, row) => sentence(&tell!(
            "shift row {} of {} over the row below",
            "correr la fila {} de {} sobre la fila de abajo",
            row + 1,
            names.block(*block)
        )),
        Change::Slide(block, row, by) => {
            let right = by.metres() > 0.0;
            let way = if right {
                pick("to the right", "a la derecha")
            } else {
                pick("to the left", "a la izquierda")
            };
            sentence(&tell!(
                "shift row {} of {} {} {way}",
                "correr la fila {} de {} {} {way}",
                row + 1,
                names.block(*block),
                names.length(by.metres().abs())
            ))
        }
        Change::Reveal(block, to) => sentence(&tell!(
            "set the reveal of {} to {}",
            "poner la separación de {} en {}",
            names.block(*block),
            names.length(to.metres())
        )),
        Change::OpenPathway(blocks) => open_pathway(&names, blocks),
        Change::Lift(face, by) => {
            let verb = if by.metres() > 0.0 { pick("raise", "subir") } else { pick("lower", "bajar") };
            sentence(&format!("{verb} {} {}", names.face(*face), names.length(by.metres().abs())))
        }
        Change::RepeatedCorner => pick("Take the repeated corner away", "Quitar la esquina repetida").into(),
        Change::Hole(ring) => tell!("Take hole {ring} away", "Quitar el hueco {ring}"),
        Change::DripEdge => pick("Put drip edge on with this job", "Poner goterón con esta obra").into(),
        Change::Unwaive => pick("Take the waiver away", "Quitar la dispensa").into(),
    }
}

/// Places are named up to so many.
const MOST_PLACES: usize = 12;

fn open_pathway(names: &Names<'_>, blocks: &[(BlockId, Vec<Cell>)]) -> String {
    let of_block = |(block, cells): &(BlockId, Vec<Cell>)| {
        let place = |cell: &Cell| tell!("row {} place {}", "fila {} lugar {}", cell.row + 1, cell.column + 1);
        let places: Vec<String> = cells.iter().take(MOST_PLACES).map(place).collect();
        let more = if cells.len() > places.len() { ", …" } else { "" };
        format!("{} ({}{more})", names.block(*block), places.join(", "))
    };
    tell!(
        "Switch off {} of {}",
        "Quitar {} de {}",
        modules(blocks.iter().map(|(_, cells)| cells.len()).sum()),
        blocks.iter().map(of_block).collect::<Vec<_>>().join(pick(" and ", " y "))
    )
}
