use super::*;

/// Points of some parts, each a row joined one by one without a lead; all other links take one.
fn rows(sizes: &[usize], least: usize, most: usize) -> Problem {
    let part: Vec<usize> =
        sizes.iter().enumerate().flat_map(|(part, size)| std::iter::repeat_n(part, *size)).collect();
    of_links(part.len(), least, most, |a, b| part[a] == part[b] && a.abs_diff(b) == 1)
}

fn of_links(points: usize, least: usize, most: usize, free: impl Fn(usize, usize) -> bool) -> Problem {
    let link = |a: usize, b: usize| (a != b).then(|| Link { leads: u32::from(!free(a, b)), length: 1 });
    Problem {
        links: (0..points).map(|a| (0..points).map(|b| link(a, b)).collect()).collect(),
        home: vec![0; points],
        both_ends: true,
        least,
        most,
        orders: Vec::new(),
    }
}

/// An answer that takes a lead at every link, so that nothing follows from it.
fn poor(points: usize, paths: usize) -> Vec<Vec<usize>> {
    let mut poor: Vec<Vec<usize>> = vec![Vec::new(); paths];
    let (odd, even): (Vec<usize>, Vec<usize>) = (0..points).partition(|point| point % 2 == 1);
    for (at, point) in odd.into_iter().chain(even).enumerate() {
        poor[at * paths / points].push(point);
    }
    poor
}

/// By hand: rows of 3 and 5. Two paths of 4 share one of the rows: three pieces, one lead. Of 3 to 5, each path is a row.
#[test]
fn a_row_that_two_paths_share() {
    assert_eq!(least_leads(&rows(&[3, 5], 4, 4), &poor(8, 2)), 1);
    assert_eq!(least_leads(&rows(&[3, 5], 3, 5), &poor(8, 2)), 0);
    // One path over both goes from one to the other.
    assert_eq!(least_leads(&rows(&[3, 5], 1, 8), &poor(8, 1)), 1);
}

/// Three rows of 20 on four paths of 15: no fewer of the rows fill whole paths, so that all hang together: 3 + 4 - 1 pieces, two leads. Of
/// up to 20, in three paths, none.
#[test]
fn rows_that_fill_no_whole_paths() {
    assert_eq!(least_leads(&rows(&[20, 20, 20], 15, 15), &poor(60, 4)), 2);
    assert_eq!(least_leads(&rows(&[20, 20, 20], 20, 20), &poor(60, 3)), 0);
    // Rows of 5 and 10 are one path, that of 15 another.
    assert_eq!(least_leads(&rows(&[10, 15, 5], 15, 15), &poor(30, 2)), 1);
}

/// A star of one point and four around it is passed in three pieces: leaf, middle, leaf, and two leaves. One path takes two leads, two
/// paths take one.
#[test]
fn a_part_that_no_path_covers() {
    let star = |most: usize| of_links(5, 1, most, |a, b| a == 0 || b == 0);
    assert_eq!(least_leads(&star(5), &poor(5, 1)), 2);
    assert_eq!(least_leads(&star(3), &poor(5, 2)), 1);
}

/// Of more parts than are gone through nothing is said.
#[test]
fn too_many_parts() {
    assert_eq!(least_leads(&rows(&[1; 11], 1, 11), &poor(11, 1)), 10);
    assert_eq!(least_leads(&rows(&[1; 12], 1, 12), &poor(12, 1)), 0);
}
