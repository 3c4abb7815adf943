import { densityRanges } from '@/app/_ui/density-words';
import { SelectField, TextField } from '@/app/_ui/field';
import { bales } from '@/lib/domain/catalogue/bales';
import { materials } from '@/lib/domain/catalogue/materials';
import { plainPounds } from '@/lib/domain/ledger/pounds';
import type { listDeliveries } from '@/lib/usecases/deliveries/read-deliveries';

type DeliveryRecord = Awaited<ReturnType<typeof listDeliveries.run>>['deliveries'][number];
type Given = Partial<Omit<DeliveryRecord, 'closesAt'>> & { closesAt: string };
type Named = readonly { readonly id: string; readonly name: string }[];
type Props = { given: Given; members: Named; dropPoints: Named; suppliers: Named };

// A load is a bale or a barrow: these two are shown (app/globals.css) and read only where it is a bale.
function BaleFields({ given: { baleMassG } }: { given: Given }) {
  const kind = bales.find(({ massG }) => massG === baleMassG);
  return (
    <div className="row only-bales">
      <SelectField
        name="bale"
        label="By the bale, its kind"
        empty="none of these"
        value={kind?.key ?? ''}
        choices={bales.map(({ key, name, massG }) => ({ value: key, label: `${name}: ${massG / 1000} kg` }))}
      />
      <TextField
        name="baleKg"
        label="or one weighs"
        value={baleMassG == null || kind ? '' : String(baleMassG / 1000)}
        inputMode="numeric"
        suffix="kg"
        hint="Ask whoever sells them; a small bale of two strings weighs 12 to 14 kg."
        className="short-field"
      />
    </div>
  );
}

/** The fields of a delivery. Densities differ by a factor of two between sources: the range stands beside the field. */
export function FactsFields({ given, members, dropPoints, suppliers }: Props) {
  return (
    <>
      <TextField name="name" label="Name" value={given.name ?? ''} hint="such as: Stable load of 5 December" />
      <SelectField
        name="materialKey"
        label="Material"
        value={given.materialKey ?? 'horse-manure'}
        choices={materials.map(({ key, name }) => ({ value: key, label: name }))}
      />
      <div className="row">
        <TextField
          name="amount"
          label="Amount"
          inputMode="decimal"
          value={given.amount ? String(given.amount.thousandths / 1000) : ''}
          className="short-field"
        />
        <SelectField
          name="amountUnit"
          label="in"
          value={given.amount?.unit ?? 'm3'}
          choices={[
            { value: 'm3', label: 'cubic metres' },
            { value: 'tonnes', label: 'tonnes' },
            { value: 'loads', label: 'barrow-loads' },
            { value: 'bales', label: 'bales of straw' },
          ]}
          className="short-field"
        />
      </div>
      <div className="not-bales">
        <TextField
          name="densityGPerL"
          label="Density"
          value={String(given.densityGPerL ?? 400)}
          inputMode="numeric"
          suffix="g/L"
          hint={`Published, in grams a litre: ${densityRanges}. Weigh a bucket of it where you can.`}
          className="short-field"
        />
      </div>
      <BaleFields given={given} />
      <div className="row">
        <TextField name="arrivesOn" type="date" label="Comes on" value={given.arrivesOn ?? ''} />
        <TextField name="collectByOn" type="date" label="Collect by" value={given.collectByOn ?? ''} />
      </div>
      <TextField name="closesAt" type="datetime-local" label="Booking closes" value={given.closesAt} />
      <TextField
        name="ageMonths"
        label="Age"
        value={given.ageMonths == null ? '' : String(given.ageMonths)}
        inputMode="numeric"
        suffix="months"
        hint="Fresh manure wants months before a crop that is eaten raw."
        className="short-field"
      />
      {suppliers.length ? (
        <SelectField
          name="supplierId"
          label="Supplier"
          empty="none of these"
          value={given.supplierId ?? ''}
          choices={suppliers.map(({ id, name }) => ({ value: id, label: name }))}
        />
      ) : null}
      <TextField
        name="supplier"
        label="From, as members read it"
        value={given.supplier ?? ''}
        hint="Ask them about weedkiller in the hay and straw. Empty: the supplier’s name."
      />
      <TextField
        name="capLoads"
        label="Limit for one holding"
        value={given.capLoads == null ? '' : String(given.capLoads)}
        inputMode="numeric"
        suffix="loads or bales"
        hint="empty: none"
        className="short-field"
      />
      {dropPoints.length ? (
        <SelectField
          name="dropPointId"
          label="Drop point"
          empty="not settled yet"
          value={given.dropPointId ?? ''}
          choices={dropPoints.map(({ id, name }) => ({ value: id, label: name }))}
        />
      ) : null}
      <TextField
        name="dropPoint"
        label={dropPoints.length ? 'Where there' : 'Drop point'}
        value={given.dropPoint ?? ''}
        hint="such as: on the hard standing, clear of the tap"
      />
      <SelectField
        name="keyHolderId"
        label="Key-holder"
        empty="nobody named"
        value={given.keyHolderId ?? ''}
        choices={members.map(({ id, name }) => ({ value: id, label: name }))}
      />
      <TextField
        name="gateNote"
        label="At the gate"
        value={given.gateNote ?? ''}
        hint="Codes stay on the signed-in page: never in mail or the book."
      />
      <TextField
        name="unloadersWanted"
        label="Unloaders wanted"
        value={String(given.unloadersWanted ?? 0)}
        inputMode="numeric"
        className="short-field"
      />
      <TextField
        name="price"
        label="Price"
        value={given.priceMinor ? plainPounds(given.priceMinor) : ''}
        inputMode="decimal"
        suffix="£"
        className="short-field"
      />
      <TextField
        name="thanks"
        label="In thanks"
        value={given.thanks ?? ''}
        hint="beside money or in its place, such as: two trays of eggs"
      />
    </>
  );
}
