import { createPortal } from 'react-dom';
import { useStore } from 'zustand';
import './print-sheets.css';
import { printStore } from './print-store';

/** What the printer gets in place of the window: each page on a sheet of its own size, at true size. */
export function PrintSheets() {
  const sheets = useStore(printStore, (s) => s.sheets);
  return sheets.length === 0
    ? null
    : createPortal(
        <div className="print-sheets">
          {sheets.map(({ url, sheet, widthPx, heightPx }, i) => (
            <div
              key={url}
              className="print-sheet"
              data-sheet={sheet ? `${sheet.size}-${sheet.orientation}` : undefined}
            >
              <img src={url} alt={`Page ${i + 1}`} style={{ width: widthPx, height: heightPx }} />
            </div>
          ))}
        </div>,
        document.body,
      );
}
