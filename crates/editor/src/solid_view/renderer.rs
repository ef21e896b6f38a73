//! Renders pictures of the house on a separate thread, so that the window never waits.

use chalkcourse_job::Resolved;
use chalkcourse_picture::{Picture, Scene, Shot};
use chalkcourse_plan::Plan;
use chalkcourse_solid::{Show, SolidObject, solid};
use egui::{ColorImage, Context, TextureHandle, TextureOptions};
use std::sync::Arc;
use std::sync::mpsc::{Receiver, Sender, channel};

/// What to render.
#[derive(Clone, Debug)]
pub(crate) struct RenderRequest {
    pub(crate) job: Arc<Resolved>,
    pub(crate) plan: Arc<Plan>,
    pub(crate) show: Show,
    pub(crate) shot: Shot,
}

impl RenderRequest {
    fn same_house(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.plan, &other.plan) && Arc::ptr_eq(&self.job, &other.job) && self.show == other.show
    }

    fn same(&self, other: &Self) -> bool {
        self.same_house(other) && self.shot == other.shot
    }
}

/// The picture on display.
struct Displayed {
    texture: TextureHandle,
    picture: Picture,
}

/// The renderer; only the latest request counts.
#[derive(Default)]
pub(crate) struct Renderer {
    orders: Option<Sender<RenderRequest>>,
    pictures: Option<Receiver<Picture>>,
    asked: Option<RenderRequest>,
    hung: Option<Displayed>,
    /// No thread could be started.
    is_unavailable: bool,
}

impl std::fmt::Debug for Renderer {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Renderer").field("asked", &self.asked.is_some()).finish_non_exhaustive()
    }
}

impl Renderer {
    /// Requests a picture, unless it is the same as the last request.
    pub(crate) fn ask(&mut self, ctx: &Context, order: RenderRequest) {
        if self.is_unavailable || self.asked.as_ref().is_some_and(|asked| asked.same(&order)) {
            return;
        }
        if self.orders.is_none() {
            self.start_thread(ctx);
        }
        let sent = self.orders.as_ref().is_some_and(|orders| orders.send(order.clone()).is_ok());
        if sent {
            self.asked = Some(order);
        } else {
            self.is_unavailable = true;
        }
    }

    /// Displays the newest finished picture; returns whether there is one.
    pub(crate) fn show_newest(&mut self, ctx: &Context, name: &str) -> bool {
        let newest = self.pictures.as_ref().and_then(|pictures| pictures.try_iter().last());
        if let Some(picture) = newest.filter(|picture| !picture.rgba.is_empty()) {
            let image = ColorImage::from_rgba_unmultiplied(picture.size, &picture.rgba);
            match &mut self.hung {
                Some(hung) => {
                    hung.texture.set(image, TextureOptions::LINEAR);
                    hung.picture = picture;
                }
                None => {
                    let texture = ctx.load_texture(name, image, TextureOptions::LINEAR);
                    self.hung = Some(Displayed { texture, picture });
                }
            }
        }
        self.hung.is_some()
    }

    /// The picture on display.
    pub(crate) fn texture(&self) -> Option<&TextureHandle> {
        self.hung.as_ref().map(|hung| &hung.texture)
    }

    /// What is at a point of the displayed picture; coordinates from 0 to 1 from the left and the top.
    pub(crate) fn what(&self, x: f32, y: f32) -> Option<SolidObject> {
        let picture = &self.hung.as_ref()?.picture;
        let [width, height] = picture.size;
        let at = |share: f32, pixels: usize| (share.clamp(0.0, 1.0) * pixels as f32) as usize;
        picture.what(at(x, width), at(y, height))
    }

    /// Whether rendering is impossible.
    pub(crate) fn is_unavailable(&self) -> bool {
        self.is_unavailable
    }

    fn start_thread(&mut self, ctx: &Context) {
        let (orders, inbox) = channel::<RenderRequest>();
        let (outbox, pictures) = channel();
        let ctx = ctx.clone();
        let hired = std::thread::Builder::new().name("pictures".to_owned()).spawn(move || {
            let mut house: Option<(RenderRequest, Scene)> = None;
            while let Ok(first) = inbox.recv() {
                // Of several pending requests only the last one counts.
                let order = inbox.try_iter().last().unwrap_or(first);
                let known = house.take().filter(|(known, _)| known.same_house(&order));
                let scene = match known {
                    Some((_, scene)) => scene,
                    None => Scene::of(&solid(&order.job, &order.plan.layout, order.show)),
                };
                let picture = scene.draw(&order.shot);
                house = Some((order, scene));
                if outbox.send(picture).is_err() {
                    break;
                }
                ctx.request_repaint();
            }
        });
        self.is_unavailable = hired.is_err();
        (self.orders, self.pictures) = (Some(orders), Some(pictures));
    }
}
